package freshfurrow.model.learn;

import freshfurrow.model.season.Rain;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * What the days per depth of rain may be, by what people saw of ground. A rain closes a field until the date of the rain plus depth times
 * days, rounded up; so ground that is unfit n days after it had more than n days, unless it was closed by a rain before, and ground that is fit
 * had at most as many days as have gone by.
 *
 * @param rains that had begun, by time; at least one, of which the last is the one that is asked about
 */
record DryingBounds(List<Rain> rains) {
    /** By the rule fields open in the morning; ground that is found fit later than this may not have been so that morning. */
    private static final LocalTime FORENOON = LocalTime.NOON;

    /** No drying figure of at most this, days per mm, goes with ground that was unfit then. */
    double notBelow(LocalDateTime unfit) {
        return rains.stream()
                .mapToDouble(rain -> days(rain, unfit.toLocalDate()) / rain.mm())
                .min()
                .orElseThrow();
    }

    /**
     * No drying figure above this, days per mm, goes with ground that was fit then.
     *
     * @param unfit when it was unfit last: it was not fit in the morning of that day
     */
    double notAbove(LocalDateTime fit, Optional<LocalDateTime> unfit) {
        LocalDate seen = fit.toLocalDate().plusDays(fit.toLocalTime().isBefore(FORENOON) ? 0 : 1);
        LocalDate sure = unfit.map(at -> at.toLocalDate().plusDays(1))
                .filter(seen::isBefore)
                .orElse(seen);
        Rain last = rains.get(rains.size() - 1);
        return days(last, sure) / last.mm();
    }

    private static double days(Rain rain, LocalDate date) {
        return ChronoUnit.DAYS.between(rain.date(), date);
    }
}
