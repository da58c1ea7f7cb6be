package freshfurrow.cli.example;

import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.FromLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.season.Standing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan of the example season: water is drawn on Monday, N40 is planted on Tuesday from one load, S80 on Wednesday, a day
 * late, from a second one; E20 is left over.
 */
public final class ExamplePlan {
    private ExamplePlan() {}

    public static Plan plan() {
        return plan(DisplayUnits.METRIC);
    }

    public static Plan plan(DisplayUnits units) {
        return new Plan(
                new Plan.SeasonSource("example", "season.yaml", "ab".repeat(32), units),
                new Plan.Score(0, -2000, -77),
                new Plan.Totals(12, 0, 2, 4, 2, 1, 0, 2, 24, 0, 2, 0, 0, 19, 164, at(WEDNESDAY, "08:20")),
                Map.of("P1", new Plan.PlanterPlan(2_000, List.of("N40", "S80"), List.of(), planterActivities())),
                Map.of("R1", new Plan.RigPlan(rigActivities())),
                List.of(
                        new Plan.Load(
                                "L0001",
                                "P1",
                                "R1",
                                "standard",
                                1_600,
                                List.of("B0001"),
                                1_600,
                                0,
                                at(TUESDAY, "12:00"),
                                at(TUESDAY, "09:16")),
                        new Plan.Load(
                                "L0002",
                                "P1",
                                "R1",
                                "standard",
                                800,
                                List.of("B0002"),
                                800,
                                0,
                                at(WEDNESDAY, "12:08"),
                                at(WEDNESDAY, "08:20"))),
                List.of(
                        new Plan.Batch("B0001", "R1", at(TUESDAY, "06:45"), at(TUESDAY, "07:00"), 16, 150, lots(10, 6)),
                        new Plan.Batch(
                                "B0002",
                                "R1",
                                at(WEDNESDAY, "07:00"),
                                at(WEDNESDAY, "07:08"),
                                8,
                                75,
                                Map.of("bought", 8.0))),
                List.of(new Plan.Unserved("E20", 2, "no compost left after 2027-04-21: 4 kg short")),
                Optional.empty(),
                List.of());
    }

    /** The same with loads that use up some of their reserve. */
    public static Plan intoReserve() {
        Plan plan = plan();
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                plan.planters(),
                plan.rigs(),
                plan.loads().stream().map(ExamplePlan::intoReserve).toList(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits());
    }

    private static Plan.Load intoReserve(Plan.Load load) {
        return new Plan.Load(
                load.id(),
                load.planter(),
                load.rig(),
                load.recipe(),
                load.litres(),
                load.batches(),
                load.appliedL(),
                load.dumpedL(),
                load.deadline(),
                load.lastDrop(),
                true);
    }

    /** The same by clocks that are changed. */
    public static Plan withClockChanges(List<ClockChanges.Change> changes) {
        Plan plan = plan();
        Plan.SeasonSource source = plan.season();
        return new Plan(
                new Plan.SeasonSource(
                        source.name(), source.file(), source.sha256(), source.units(), source.names(), changes),
                plan.score(),
                plan.totals(),
                plan.planters(),
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits());
    }

    /** The same with a load of 1,000 L for 5 ha, of which 2 ha are planted on Tuesday evening and 3 ha on Wednesday morning. */
    public static Plan overnight() {
        Plan plan = plan();
        Plan.Load load = new Plan.Load(
                "L0001",
                "P1",
                "R1",
                "standard",
                1_000,
                List.of("B0001"),
                1_000,
                0,
                at(WEDNESDAY, "09:00"),
                at(WEDNESDAY, "06:45"));
        List<Activity> activities = List.of(
                new Activity.Fill(at(TUESDAY, "16:20"), at(TUESDAY, "16:30"), "N40", "L0001"),
                new Activity.Plant(at(TUESDAY, "16:30"), at(TUESDAY, "17:00"), "N40", "L0001", 2),
                new Activity.Plant(at(WEDNESDAY, "06:00"), at(WEDNESDAY, "06:45"), "N40", "L0001", 3));
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                Map.of("P1", new Plan.PlanterPlan(2_000, List.of("N40"), List.of(), activities)),
                plan.rigs(),
                List.of(load, plan.loads().get(1)),
                plan.batches(),
                List.of(),
                plan.bounds(),
                plan.limits());
    }

    /** The plan with other activities of its planter. */
    public static Plan withActivities(List<Activity> planter) {
        Plan plan = plan();
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                Map.of("P1", new Plan.PlanterPlan(2_000, List.of("N40"), List.of(), planter)),
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                List.of(),
                plan.bounds(),
                plan.limits());
    }

    /** The plan with compost that the rig fetches on Tuesday, of both lots at the well: 10 kg of windrow and 14 kg of bought, of which 8 kg stay on board. */
    public static Plan fetched() {
        Plan plan = plan();
        List<Activity> rig = new ArrayList<>(rigActivities());
        rig.add(2, new Activity.LoadCompost(at(TUESDAY, "06:10"), at(TUESDAY, "06:11"), "well", "windrow", 10));
        rig.add(3, new Activity.LoadCompost(at(TUESDAY, "06:20"), at(TUESDAY, "06:22"), "well", "bought", 14));
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                plan.planters(),
                Map.of("R1", new Plan.RigPlan(rig)),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits());
    }

    /** The plan as one of what is left of its season, which begins with the machines standing so. */
    public static Plan from(Standing standing, List<Plan.Batch> before) {
        Plan plan = plan();
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                plan.planters(),
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits(),
                Optional.of(new PlanStart(
                        standing,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Map.of(),
                        before,
                        FromLog.NOTHING,
                        Optional.empty())));
    }

    private static List<Activity> planterActivities() {
        return List.of(
                new Activity.Move(at(TUESDAY, "06:40"), at(TUESDAY, "06:58"), "yard", "N40", 4),
                new Activity.Wait(at(TUESDAY, "06:58"), at(TUESDAY, "07:00"), "N40", WaitReason.RIG),
                new Activity.Fill(at(TUESDAY, "07:00"), at(TUESDAY, "07:16"), "N40", "L0001"),
                new Activity.Plant(at(TUESDAY, "07:16"), at(TUESDAY, "09:16"), "N40", "L0001", 8),
                new Activity.Move(at(WEDNESDAY, "06:40"), at(WEDNESDAY, "07:00"), "N40", "S80", 5),
                new Activity.Fill(at(WEDNESDAY, "07:08"), at(WEDNESDAY, "07:20"), "S80", "L0002"),
                new Activity.Plant(at(WEDNESDAY, "07:20"), at(WEDNESDAY, "08:20"), "S80", "L0002", 4));
    }

    private static List<Activity> rigActivities() {
        return List.of(
                new Activity.Move(at(MONDAY, "16:00"), at(MONDAY, "16:10"), "yard", "well", 5),
                new Activity.Draw(at(MONDAY, "16:10"), at(MONDAY, "16:40"), "well", 3_000),
                new Activity.Move(at(TUESDAY, "06:35"), at(TUESDAY, "06:45"), "well", "N40", 5),
                new Activity.Extract(at(TUESDAY, "06:45"), at(TUESDAY, "07:00"), "N40", "B0001"),
                new Activity.Transfer(at(TUESDAY, "07:00"), at(TUESDAY, "07:16"), "N40", "L0001", 1_600),
                new Activity.Clean(at(TUESDAY, "07:16"), at(TUESDAY, "07:19"), "N40"),
                new Activity.Extract(at(WEDNESDAY, "07:00"), at(WEDNESDAY, "07:08"), "S80", "B0002"),
                new Activity.Transfer(at(WEDNESDAY, "07:08"), at(WEDNESDAY, "07:20"), "S80", "L0002", 800),
                new Activity.Clean(at(WEDNESDAY, "07:20"), at(WEDNESDAY, "07:23"), "S80"));
    }

    private static Map<String, Double> lots(double windrowKg, double boughtKg) {
        Map<String, Double> lots = new LinkedHashMap<>();
        lots.put("windrow", windrowKg);
        lots.put("bought", boughtKg);
        return lots;
    }

    public static LocalDateTime at(LocalDate date, String time) {
        return date.atTime(LocalTime.parse(time));
    }
}
