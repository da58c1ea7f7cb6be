package freshfurrow.cli.example;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The example season where fields may be planted without extract, and S80 is sprayed by a boom that is mounted on R1: of N40 5 ha are planted
 * with extract and 3 ha without, S80 is sprayed, E20 is planted without extract.
 */
public final class MixedExample {
    private MixedExample() {}

    public static Season season() {
        Season season = ExampleSeason.season();
        return season.change()
                .goals(season.goals().withUntreatedDays(OptionalDouble.of(4)))
                .fields(season.fields().stream()
                        .map(field -> field.id().equals("S80")
                                ? field.change().work(Work.SPRAY).field()
                                : field)
                        .toList())
                .season();
    }

    public static Plan plan() {
        Plan plan = ExamplePlan.plan();
        Plan.Load sprayed = plan.loads().get(1);
        Map<String, Plan.PlanterPlan> machines = new LinkedHashMap<>();
        machines.put(
                "P1",
                new Plan.PlanterPlan(
                        2_000,
                        List.of("N40", "E20"),
                        List.of("E20"),
                        List.of(
                                new Activity.Fill(at(TUESDAY, "07:00"), at(TUESDAY, "07:16"), "N40", "L0001"),
                                new Activity.Plant(at(TUESDAY, "07:16"), at(TUESDAY, "08:31"), "N40", "L0001", 5),
                                new Activity.PlantWithout(at(TUESDAY, "08:31"), at(TUESDAY, "09:16"), "N40", 3),
                                new Activity.PlantWithout(at(WEDNESDAY, "07:00"), at(WEDNESDAY, "07:30"), "E20", 2))));
        machines.put(
                "boom",
                new Plan.PlanterPlan(
                        Work.SPRAY,
                        Optional.of("R1"),
                        3_000,
                        List.of("S80"),
                        List.of(),
                        List.of(
                                new Activity.Fill(at(WEDNESDAY, "07:08"), at(WEDNESDAY, "07:20"), "S80", "L0002"),
                                new Activity.Plant(
                                        at(WEDNESDAY, "07:20"), at(WEDNESDAY, "08:20"), "S80", "L0002", 4))));
        return new Plan(
                plan.season(),
                plan.score(),
                new Plan.Totals(14, 5, 0, 4, 2, 1, 0, 2, 24, 0, 2, 0, 0, 19, 164, at(WEDNESDAY, "08:20")),
                machines,
                plan.rigs(),
                List.of(
                        plan.loads().get(0),
                        new Plan.Load(
                                sprayed.id(),
                                "boom",
                                sprayed.rig(),
                                sprayed.recipe(),
                                sprayed.litres(),
                                sprayed.batches(),
                                sprayed.appliedL(),
                                sprayed.dumpedL(),
                                sprayed.deadline(),
                                sprayed.lastDrop())),
                plan.batches(),
                List.of(),
                Optional.empty(),
                List.of());
    }
}
