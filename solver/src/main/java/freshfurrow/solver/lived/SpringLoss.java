package freshfurrow.solver.lived;

import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.season.Season;

/** What of a season was late, unplanted or without extract in a spring, as late ha-days. */
final class SpringLoss {
    private final double unservedDays;
    private final double untreatedDays;

    /** A hectare not planted is late by all days of the season; one without extract counts what the season says, as far as that is so. */
    SpringLoss(Season season) {
        untreatedDays = season.goals().untreatedDays().orElse(0);
        unservedDays = season.days() + untreatedDays;
    }

    /** ha-days, 0 or more. */
    double haDays(SpringFigures spring) {
        return haDays(spring.lateHaDays(), spring.unservedHa(), spring.untreatedHa());
    }

    /** The same of means over springs. */
    double haDays(double lateHaDays, double unservedHa, double untreatedHa) {
        return lateHaDays + unservedHa * unservedDays + untreatedHa * untreatedDays;
    }
}
