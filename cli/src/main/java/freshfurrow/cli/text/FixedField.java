package freshfurrow.cli.text;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.WetGround;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A field that is fixed to a planter or a day, and what a plan makes of that.
 *
 * @param begun the day on which the plan begins it; empty when it never does
 * @param whyNot why it is not begun on the day that it is fixed to, in one clause; empty when it is, or may be begun on any
 */
public record FixedField(Field field, Optional<LocalDate> begun, Optional<String> whyNot) {

    /** Those of what is left of a season, in its order. */
    public static List<FixedField> of(Season season, Plan plan) {
        return FieldWork.of(season, plan).stream()
                .filter(work -> !work.field().fixed().equals(Fixed.NOT))
                .map(work -> of(season, plan, work))
                .toList();
    }

    /** As {@code fixed to P1, to start on Tue 2027-05-04}. */
    public static String words(Fixed fixed) {
        return "fixed"
                + fixed.planter().map(planter -> " to " + planter).orElse("")
                + (fixed.planter().isPresent() && fixed.on().isPresent() ? "," : "")
                + fixed.on().map(day -> " to start on " + Figures.day(day)).orElse("");
    }

    /** The promise that is not kept, with its reason, in one clause. */
    public Optional<String> broken() {
        return whyNot.map(why -> words(field.fixed())
                + begun.map(day -> ", starts on " + Figures.day(day)).orElse(", is unplanted") + ": " + why);
    }

    private static FixedField of(Season season, Plan plan, FieldWork work) {
        Optional<LocalDate> begun = work.start().map(LocalDateTime::toLocalDate);
        return new FixedField(
                work.field(),
                begun,
                work.field()
                        .fixed()
                        .on()
                        .filter(day -> !begun.equals(Optional.of(day)))
                        .map(day -> whyNot(season, plan, work, day)));
    }

    private static String whyNot(Season season, Plan plan, FieldWork work, LocalDate day) {
        Field field = work.field();
        LocalDateTime from = day.atStartOfDay();
        LocalDateTime to = day.plusDays(1).atStartOfDay();
        if (plan.start().map(PlanStart::now).filter(now -> !now.isBefore(to)).isPresent()) {
            return "that day was over when this plan was made";
        }
        Optional<WetGround> wet = WetGround.of(season, field.ground()).stream()
                .filter(its -> its.from().isBefore(to) && its.to().isAfter(from))
                .findFirst();
        if (wet.isPresent()) {
            return "its ground is too wet until "
                    + new Figures(season.units()).moment(wet.get().to());
        }
        if (season.compostWithThatOnBoard().stream().allMatch(lot -> lot.from().isAfter(day))) {
            return "no compost is on hand that day";
        }
        return season.outages().stream()
                .filter(outage -> outage.from().isBefore(to) && outage.until().isAfter(from))
                .map(Outage::machine)
                .findFirst()
                .map(machine -> machine + " is down that day")
                .or(() -> work.unserved().map(Plan.Unserved::why))
                .orElse("the search found no planting orders that leave room for it that day");
    }
}
