package freshfurrow.solver.why;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A season of four days whose arithmetic can be done in the head. Unless a test says otherwise:
 *
 * <ul>
 *   <li>Recipe: 200 L/ha and 10 kg/ha, hold time 5 h.
 *   <li>One planter, 07:00 to 19:00, standing in the first field: 10 m2/s, so 1 ha in 1,000 s. Tank 1,000 L: 5 ha. 300 s setup for a
 *       fill, no move time, road 5 m/s.
 *   <li>Rig, 06:00 to 20:00, at the yard: a batch is 50 kg (5 ha) in 900 s, cleaning 180 s. Nurse tank 2,000 L. Transfer 2 L/s, so
 *       that a full tank takes 300 s + 500 s. Road 10 m/s.
 *   <li>Water: one hose of 5 L/s. Roads: yard to well 1,000 m, well to any field 2,000 m, field to field 1,000 m.
 * </ul>
 */
final class WhySeason {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);

    private final List<Field> fields = new ArrayList<>();
    private final List<CompostLot> lots = new ArrayList<>();
    private final List<Rain> rain = new ArrayList<>();
    private int batchTimeS = 900;
    private int rigFrom = 6;
    private OptionalInt longestWaitS = OptionalInt.empty();
    private ExtractAt extractAt = ExtractAt.FIELD;
    private Goals goals = Goals.DEFAULT;
    private DisplayUnits units = DisplayUnits.METRIC;

    WhySeason field(String id, double areaHa, int firstDay, int lastDay) {
        fields.add(WithDefaults.field(
                id,
                id,
                areaHa,
                Optional.empty(),
                List.of(),
                "corn",
                new DateWindow(day(firstDay), day(lastDay)),
                "standard",
                Drainage.MODERATE,
                1,
                Set.of()));
        return this;
    }

    WhySeason lot(double kg, int fromDay) {
        lots.add(new CompostLot("lot" + lots.size(), kg, day(fromDay)));
        return this;
    }

    WhySeason batchTime(int seconds) {
        batchTimeS = seconds;
        return this;
    }

    WhySeason units(DisplayUnits shown) {
        units = shown;
        return this;
    }

    /** Fields may be planted without extract. */
    WhySeason untreated() {
        goals = Goals.DEFAULT.withUntreatedDays(OptionalDouble.of(4));
        return this;
    }

    /** The rig works from that hour on, and the planter waits for it for so many minutes at most. */
    WhySeason lateRig(int hour, int longestWaitMin) {
        rigFrom = hour;
        longestWaitS = OptionalInt.of(60 * longestWaitMin);
        return this;
    }

    /** Batches are made at the well. */
    WhySeason atTheWater() {
        extractAt = ExtractAt.WATER;
        return this;
    }

    /** Rain at midnight that keeps fields closed for a day per mm. */
    WhySeason rain(int day, double mm) {
        rain.add(new Rain(day(day), 0, mm));
        return this;
    }

    /** The field explained in the plan of the planter's list, ids with blanks between them. */
    FieldExplanation explain(String id, String list) {
        return explain(id, list, Set.of());
    }

    /** The same where some fields are to be planted without extract. */
    FieldExplanation explain(String id, String list, Set<String> without) {
        CompiledSeason season = CompiledSeason.of(season());
        Plan plan = PlanRecorder.record(
                season,
                new PlantingOrders(List.of(list.isEmpty() ? List.of() : List.of(list.split(" ", -1))), without),
                new Plan.SeasonSource("Why", "s.yaml", "0".repeat(64), units));
        Field field =
                fields.stream().filter(own -> own.id().equals(id)).findFirst().orElseThrow();
        return FieldExplanation.of(season, season.season(), plan, field);
    }

    private Season season() {
        return new Season(
                "Why",
                FIRST,
                day(4),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(), Set.of()),
                Map.of("yard", Optional.of(new GeoPoint(41, -97))),
                List.of(WithDefaults.recipe("standard", 200, 10, 5 * 3600)),
                fields,
                List.of(WithDefaults.planter(
                                "P1",
                                10,
                                0.75,
                                2,
                                0.5,
                                1000,
                                5,
                                300,
                                0,
                                fields.get(0).id(),
                                hours(7, 19))
                        .change()
                        .longestWaitS(longestWaitS)
                        .planter()),
                List.of(WithDefaults.rig(
                        "R1",
                        160,
                        50,
                        batchTimeS,
                        180,
                        2000,
                        2,
                        10,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        extractAt,
                        "yard",
                        hours(rigFrom, 20))),
                List.of(WithDefaults.waterPoint(
                        "well", Optional.empty(), 5, 1, WorkHours.ALWAYS, OptionalDouble.empty(), 0)),
                lots.isEmpty() ? List.of(new CompostLot("heap", 10_000, FIRST)) : lots,
                new Drying(0, 1, 1, 1),
                rain,
                Optional.empty(),
                WhySeason::metres,
                goals,
                units,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static WorkHours hours(int from, int to) {
        return new WorkHours(List.of(new DaySpan(from * 3600, to * 3600)));
    }

    private static double metres(String from, String to) {
        if (from.equals(to)) {
            return 0;
        }
        boolean water = from.equals("well") || to.equals("well");
        boolean yard = from.equals("yard") || to.equals("yard");
        return water && !yard ? 2000 : 1000;
    }

    private static LocalDate day(int number) {
        return FIRST.plusDays(number - 1L);
    }
}
