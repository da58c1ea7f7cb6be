package freshfurrow.solver.relaxation;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Planters that differ in nothing that counts for fills but in the fields that they may plant. */
record AlikePlanters(List<Integer> planters) {
    AlikePlanters {
        planters = List.copyOf(planters);
    }

    static List<AlikePlanters> of(CompiledSeason season, LargestLoads largest, PlanterDays days) {
        Map<List<Object>, List<Integer>> byKind = new LinkedHashMap<>();
        for (int p = 0; p < season.planterCount(); p++) {
            byKind.computeIfAbsent(kind(season, largest, days, p), none -> new ArrayList<>())
                    .add(p);
        }
        return byKind.values().stream().map(AlikePlanters::new).toList();
    }

    private static List<Object> kind(CompiledSeason season, LargestLoads largest, PlanterDays days, int planter) {
        Applicator machine = season.season().applicators().get(planter);
        List<Object> kind = new ArrayList<>();
        kind.add(machine.fieldCapacityM2PerS());
        kind.add(machine.fillSetupS());
        kind.add(machine.on().isPresent());
        IntStream.range(0, season.season().recipes().size()).forEach(recipe -> kind.add(largest.dm2(planter, recipe)));
        IntStream.range(0, season.days()).forEach(day -> {
            kind.add(days.hoursS(planter, day));
            kind.add(days.mayBeginLoaded(planter, day));
            kind.add(days.isOfWholeLoads(planter, day));
        });
        return kind;
    }

    int count() {
        return planters.size();
    }

    int first() {
        return planters.get(0);
    }
}
