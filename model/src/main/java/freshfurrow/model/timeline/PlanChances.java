package freshfurrow.model.timeline;

import freshfurrow.model.plan.Chances;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Field;
import freshfurrow.model.timeline.journal.LoadFates;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How sure a plan is: its orders played out in one simulated season after another, whose times vary as the season says. Safe for several threads at
 * once; what they count is put together by {@link #chances}.
 */
public final class PlanChances {
    private final CompiledSeason season;
    private final PlayedLists lists;
    private final Plan plan;
    /** By planter, the ids of its loads in their order. */
    private final List<List<String>> loads = new ArrayList<>();
    /** By planter and load, the middle of the ground that it is for. */
    private final long[][] middle;

    private final List<String> crops;
    private final int[] cropOfField;

    /**
     * Of a plan of a season.
     *
     * @param season that the plan is of; of what is left of a season, what {@link freshfurrow.model.plan.PlanStart#remaining} makes of it
     */
    public PlanChances(CompiledSeason season, Plan plan) {
        this.season = season;
        this.plan = plan;
        lists = PlayedLists.of(season, PlantingOrders.of(plan));
        LoadFates planned = played(new Timeline(season));
        middle = new long[season.planterCount()][];
        for (int p = 0; p < middle.length; p++) {
            String id = season.season().applicators().get(p).id();
            loads.add(plan.loads().stream()
                    .filter(load -> load.planter().equals(id))
                    .map(Plan.Load::id)
                    .toList());
            middle[p] = planned.of(p).stream()
                    .mapToLong(fate -> (fate.fromDm2() + fate.toDm2()) / 2)
                    .toArray();
            if (middle[p].length != loads.get(p).size()) {
                throw new IllegalArgumentException("the plan is not of this season: loads of " + id);
            }
        }
        List<Field> fields = season.season().fields();
        crops = fields.stream().map(Field::crop).distinct().toList();
        cropOfField =
                fields.stream().mapToInt(field -> crops.indexOf(field.crop())).toArray();
    }

    private LoadFates played(Timeline timeline) {
        LoadFates fates = new LoadFates(tables(), lists.entries());
        timeline.play(lists.entries(), lists.sizes(), fates);
        return fates;
    }

    private SeasonTables tables() {
        return season.tables();
    }

    /** In how many of some simulated seasons loads go stale and crops are in their windows. */
    public static final class Count {
        private int seasons;
        private final int[][] stale;
        private final int[] inWindow;

        private Count(int[][] stale, int[] inWindow) {
            this.stale = stale;
            this.inWindow = inWindow;
        }

        private void add(Count other) {
            seasons += other.seasons;
            for (int p = 0; p < stale.length; p++) {
                for (int i = 0; i < stale[p].length; i++) {
                    stale[p][i] += other.stale[p][i];
                }
            }
            for (int crop = 0; crop < inWindow.length; crop++) {
                inWindow[crop] += other.inWindow[crop];
            }
        }
    }

    private Count none() {
        return new Count(
                Arrays.stream(middle).map(loadsOf -> new int[loadsOf.length]).toArray(int[][]::new),
                new int[crops.size()]);
    }

    /** Plays so many simulated seasons, from the one of a number on. */
    public Count count(long firstNumber, int seasons) {
        Timeline timeline = new Timeline(season);
        Count count = none();
        for (int i = 0; i < seasons; i++) {
            timeline.turnsOut(firstNumber + i);
            add(count, played(timeline));
        }
        return count;
    }

    private void add(Count count, LoadFates fates) {
        count.seasons++;
        for (int p = 0; p < middle.length; p++) {
            List<LoadFates.Fate> of = fates.of(p);
            for (int i = 0; i < middle[p].length; i++) {
                long at = middle[p][i];
                if (of.stream().anyMatch(fate -> fate.stale() && fate.fromDm2() <= at && at < fate.toDm2())) {
                    count.stale[p][i]++;
                }
            }
        }
        boolean[] missed = new boolean[crops.size()];
        for (int field = 0; field < cropOfField.length; field++) {
            missed[cropOfField[field]] |= !fates.isInWindow(field);
        }
        for (int crop = 0; crop < missed.length; crop++) {
            count.inWindow[crop] += missed[crop] ? 0 : 1;
        }
    }

    /** The chances that counts come to, in whatever order they were made. */
    public Chances chances(List<Count> counts) {
        Count all = none();
        counts.forEach(all::add);
        Map<String, Double> byLoad = new LinkedHashMap<>();
        for (int p = 0; p < middle.length; p++) {
            for (int i = 0; i < middle[p].length; i++) {
                byLoad.put(loads.get(p).get(i), share(all.stale[p][i], all.seasons));
            }
        }
        Map<String, Double> stale = new LinkedHashMap<>();
        plan.loads().stream()
                .map(Plan.Load::id)
                .filter(id -> byLoad.getOrDefault(id, 0.0) > 0)
                .forEach(id -> stale.put(id, byLoad.getOrDefault(id, 0.0)));
        Map<String, Double> inWindow = new LinkedHashMap<>();
        for (int crop = 0; crop < all.inWindow.length; crop++) {
            inWindow.put(crops.get(crop), share(all.inWindow[crop], all.seasons));
        }
        return new Chances(all.seasons, stale, inWindow);
    }

    /** To three decimals, as the plan file tells it. */
    private static double share(int count, int seasons) {
        return Math.round(1_000.0 * count / seasons) / 1_000.0;
    }
}
