package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * The order in which a planter takes the fields left in its list: first the one it has begun, if that is fit now; then those fit now;
 * then the others by when they are known to be fit. Of fields alike the plan's order decides. So wet fields, and fields whose window is
 * not open yet, are passed over and taken up again in their place.
 */
final class PassOver {
    private final Season season;
    private final KnownGround ground;

    PassOver(Season season, KnownGround ground) {
        this.season = season;
        this.ground = ground;
    }

    /**
     * The list in the order for now.
     *
     * @param left ids of fields left, in the plan's order
     * @param begun ids of fields that are planted in part
     * @param now s since the season's first midnight
     */
    List<Field> order(List<Field> left, Set<String> begun, int now) {
        List<Field> order = new ArrayList<>(left);
        order.sort(Comparator.<Field>comparingInt(field -> fitFrom(field, now))
                .thenComparing(field -> !begun.contains(field.id())));
        return order;
    }

    /** The next time after {@code now} at which one of the fields left opens its window; the season's end when none does. */
    int nextOpening(List<Field> left, int now) {
        return left.stream()
                .mapToInt(field -> opensS(field.opens()))
                .filter(opens -> opens > now)
                .min()
                .orElse(season.days() * DAY_S);
    }

    private int fitFrom(Field field, int now) {
        return ground.knownDryFrom(field.drainage(), now, Math.max(now, opensS(field.opens())));
    }

    private int opensS(LocalDate opens) {
        return (int) Math.max(0, ChronoUnit.DAYS.between(season.first(), opens)) * DAY_S;
    }
}
