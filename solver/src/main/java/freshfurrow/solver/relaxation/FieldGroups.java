package freshfurrow.solver.relaxation;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * The fields of a season in few groups. Only the sets of planters that hold the most area and only some late weights are told
 * apart: fields of other sets count as if any planter might plant them, fields of other weights as if they weighed as little as
 * the next weight below that is told apart; where people judged the ground of many fields, fields of a drainage class as if each were dry
 * when any of them is. Where there are few groups then, they are told apart by the opening of their windows
 * too. All that only eases the season, so that what bounds the eased season bounds the season.
 */
public final class FieldGroups {
    private static final int MOST_SETS = 3;
    private static final int MOST_WEIGHTS = 6;
    /** Rows are added for sets of them. */
    private static final int MOST_SOILS = 5;

    private static final List<Drainage> DRAINAGES = List.of(Drainage.values());

    private static final int MOST_GROUPS = 24;
    private static final double WEIGHT_ONE = 1000;

    private final CompiledSeason season;
    private final List<BitSet> setsToldApart;
    private final NavigableSet<Long> weightsToldApart;

    private FieldGroups(CompiledSeason season) {
        this.season = season;
        setsToldApart = largestSets();
        weightsToldApart = someWeights();
    }

    private record Kind(BitSet planters, int soil, int recipe, long weight, int extractWeight, int opens) {}

    /** The groups of all fields that some planter may plant. */
    public static List<FieldGroup> of(CompiledSeason season) {
        FieldGroups maker = new FieldGroups(season);
        List<FieldGroup> byOpening = maker.groups(true);
        return byOpening.size() <= MOST_GROUPS ? byOpening : maker.groups(false);
    }

    /** Planters that may plant a field. */
    public static BitSet planters(CompiledSeason season, int field) {
        BitSet planters = new BitSet();
        for (int p = 0; p < season.planterCount(); p++) {
            planters.set(p, season.allows(p, field));
        }
        return planters;
    }

    static BitSet allPlanters(CompiledSeason season) {
        BitSet planters = new BitSet();
        planters.set(0, season.planterCount());
        return planters;
    }

    private List<FieldGroup> groups(boolean byOpening) {
        Map<Kind, List<Integer>> byKind = new LinkedHashMap<>();
        for (int f = 0; f < season.fieldCount(); f++) {
            BitSet planters = planters(season, f);
            if (!planters.isEmpty()) {
                Kind kind = new Kind(
                        setsToldApart.contains(planters) ? planters : allPlanters(season),
                        soil(f),
                        season.recipeIndex(f),
                        weightsToldApart.floor(weight(f)),
                        byOpening && season.mayGoWithout() ? season.extractWeightThousandths(f) : 0,
                        byOpening ? season.windowFirstDay(f) : 0);
                byKind.computeIfAbsent(kind, none -> new ArrayList<>()).add(f);
            }
        }
        List<FieldGroup> groups = new ArrayList<>();
        byKind.forEach((kind, fields) -> groups.add(
                new FieldGroup(season, fields, kind.planters, kind.soil, samples(fields), kind.recipe, kind.weight)));
        return groups;
    }

    private int soil(int f) {
        int drainage = DRAINAGES.indexOf(field(f).drainage());
        return season.groundCount() <= MOST_SOILS ? drainage * MOST_SOILS + season.ground(f) : drainage;
    }

    private List<Integer> samples(List<Integer> fields) {
        Map<Integer, Integer> byGround = new LinkedHashMap<>();
        fields.forEach(f -> byGround.putIfAbsent(season.ground(f), f));
        return List.copyOf(byGround.values());
    }

    private List<BitSet> largestSets() {
        Map<BitSet, Long> area = new HashMap<>();
        for (int f = 0; f < season.fieldCount(); f++) {
            area.merge(planters(season, f), season.areaDm2(f), Long::sum);
        }
        area.remove(allPlanters(season));
        return area.entrySet().stream()
                .sorted(Map.Entry.<BitSet, Long>comparingByValue().reversed().thenComparing(entry -> entry.getKey()
                        .toString()))
                .limit(MOST_SETS)
                .map(Map.Entry::getKey)
                .toList();
    }

    private NavigableSet<Long> someWeights() {
        Set<Long> all = new TreeSet<>();
        for (int f = 0; f < season.fieldCount(); f++) {
            all.add(weight(f));
        }
        List<Long> sorted = List.copyOf(all);
        NavigableSet<Long> some = new TreeSet<>();
        int apart = Math.min(MOST_WEIGHTS, sorted.size());
        for (int i = 0; i < apart; i++) {
            some.add(sorted.get(i * sorted.size() / apart));
        }
        return some;
    }

    private long weight(int f) {
        return Math.round(field(f).lateWeight() * WEIGHT_ONE);
    }

    private Field field(int f) {
        return season.season().fields().get(f);
    }
}
