package freshfurrow.solver.limits;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Resource;
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
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.stop.StopSignal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A season of three days whose arithmetic can be done in the head. Unless a test says otherwise:
 *
 * <ul>
 *   <li>Recipe: 200 L/ha and 10 kg/ha, hold time 5 h.
 *   <li>Planters, 07:00 to 19:00, each standing in its first field: 10 m2/s, so 1 ha in 1,000 s. Tank 1,000 L: 5 ha. 300 s
 *       setup for a fill, no move time, road 5 m/s.
 *   <li>Rig, 06:00 to 20:00, at the yard: a batch is 50 kg (5 ha) in 900 s, cleaning 180 s. Nurse tank 2,000 L. Transfer 2
 *       L/s, so that a full tank takes 300 s + 500 s. Road 10 m/s.
 *   <li>Water: one hose of 5 L/s. Roads: yard to well 1,000 m, well to any field 2,000 m, field to field 1,000 m.
 * </ul>
 */
final class HeldBackSeason {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);

    private final List<Field> fields = new ArrayList<>();
    private final List<CompostLot> lots = new ArrayList<>();
    private final List<Rain> rain = new ArrayList<>();
    private double nurseTankL = 2000;
    private double flowLPerS = 5;
    private OptionalDouble dailyLimitL = OptionalDouble.empty();

    HeldBackSeason field(String id, double areaHa, int firstDay, int lastDay) {
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

    HeldBackSeason nurseTank(double litres) {
        nurseTankL = litres;
        return this;
    }

    HeldBackSeason flow(double litresPerSecond) {
        flowLPerS = litresPerSecond;
        return this;
    }

    HeldBackSeason dailyLimit(double litres) {
        dailyLimitL = OptionalDouble.of(litres);
        return this;
    }

    HeldBackSeason lot(double kg, int fromDay) {
        lots.add(new CompostLot("lot" + lots.size(), kg, day(fromDay)));
        return this;
    }

    /** Rain at midnight that keeps fields closed for a day per mm. */
    HeldBackSeason rain(int day, double mm) {
        rain.add(new Rain(day(day), 0, mm));
        return this;
    }

    /** What each resource takes from the plan of these very lists, a list a planter with blanks between the fields. */
    Map<Resource, Plan.Limit> limits(String... lists) {
        return limitsBySearch(0, lists);
    }

    /** What each resource takes from the plan of the lists when so many moves away from them are tried. */
    Map<Resource, Plan.Limit> limitsBySearch(long moves, String... lists) {
        List<List<String>> byPlanter = new ArrayList<>();
        List<Planter> planters = new ArrayList<>();
        for (String list : lists) {
            byPlanter.add(List.of(list.split(" ", -1)));
            planters.add(planter("P" + byPlanter.size(), list.split(" ", -1)[0]));
        }
        CompiledSeason season = CompiledSeason.of(season(planters));
        Plan plan = PlanRecorder.record(
                season, byPlanter, new Plan.SeasonSource("Held", "s.yaml", "0".repeat(64), DisplayUnits.METRIC));
        Map<Resource, Plan.Limit> limits = new EnumMap<>(Resource.class);
        new SeasonLimits(season, 1, 1, StopSignal.untilTold())
                .of(plan, moves)
                .orElseThrow()
                .forEach(limit -> limits.put(limit.resource(), limit));
        return limits;
    }

    private Season season(List<Planter> planters) {
        return new Season(
                "Held",
                FIRST,
                day(3),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(), Set.of()),
                Map.of("yard", Optional.of(new GeoPoint(41, -97))),
                List.of(WithDefaults.recipe("standard", 200, 10, 5 * 3600)),
                fields,
                List.copyOf(planters),
                List.of(WithDefaults.rig(
                        "R1",
                        160,
                        50,
                        900,
                        180,
                        nurseTankL,
                        2,
                        10,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        ExtractAt.FIELD,
                        "yard",
                        hours(6, 20))),
                List.of(WithDefaults.waterPoint(
                        "well", Optional.empty(), flowLPerS, 1, WorkHours.ALWAYS, dailyLimitL, 0)),
                lots.isEmpty() ? List.of(new CompostLot("heap", 10_000, FIRST)) : lots,
                new Drying(0, 1, 1, 1),
                rain,
                Optional.empty(),
                HeldBackSeason::metres,
                Goals.DEFAULT,
                DisplayUnits.METRIC,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static Planter planter(String id, String at) {
        return WithDefaults.planter(id, 10, 0.75, 2, 0.5, 1000, 5, 300, 0, at, hours(7, 19));
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
