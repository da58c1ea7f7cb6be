package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A season and a plan, looked up by name, and what was found so far. Where a name stands twice, the first one counts. */
final class Evidence {
    /** Half the last decimal that a plan file keeps of litres, kilograms and kilometres, and a little for sums. */
    static final double ROUNDING = 0.000_6;
    /** A load may be so much larger than tank, water and compost allow: less than any tank, scale or meter in the field tells. */
    static final double LEEWAY = 0.001;
    /** One square decimetre in hectares, the unit in which areas are cut, and a little for sums. */
    static final double AREA_ROUNDING_HA = 1.01e-6;
    /** Times are whole seconds. */
    static final double SECOND_ROUNDING = 0.5;

    /** Something that a machine did. */
    record Done<A extends Activity>(String machine, A activity) {
        String where() {
            return machine + " at " + activity.start();
        }
    }

    final Season season;
    final Plan plan;
    final WorkCalendar calendar;
    final CarriedOver carried;
    final WorkingDays days;
    final Map<String, Field> fields;
    final Map<String, Recipe> recipes;
    final Map<String, Applicator> planters;
    final Map<String, Rig> rigs;
    /** Ids of rigs on which sprayers are mounted. */
    final Set<String> rigsThatSpray;

    final Map<String, WaterPoint> waterPoints;
    final Map<String, CompostLot> lots;
    final Map<String, Plan.Load> loads;
    final Map<String, Plan.Batch> batches;
    final List<Done<Activity>> activities;
    private final List<Finding> findings = new ArrayList<>();

    Evidence(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
        calendar = new WorkCalendar(season);
        carried = new CarriedOver(season, plan);
        days = new WorkingDays(calendar, carried);
        fields = byName(season.fields(), Field::id);
        recipes = byName(season.recipes(), Recipe::id);
        planters = byName(season.applicators(), Applicator::id);
        rigs = byName(season.rigs(), Rig::id);
        rigsThatSpray = season.applicators().stream()
                .flatMap(machine -> machine.on().stream())
                .collect(Collectors.toSet());
        waterPoints = byName(season.waterPoints(), WaterPoint::id);
        lots = byName(season.compost(), CompostLot::id);
        loads = byName(plan.loads(), Plan.Load::id);
        batches = byName(plan.batches(), Plan.Batch::id);
        activities = Stream.concat(
                        plan.planters().entrySet().stream()
                                .flatMap(planter -> done(
                                        planter.getKey(), planter.getValue().activities())),
                        plan.rigs().entrySet().stream()
                                .flatMap(
                                        rig -> done(rig.getKey(), rig.getValue().activities())))
                .toList();
    }

    private static Stream<Done<Activity>> done(String machine, List<Activity> activities) {
        return activities.stream().map(activity -> new Done<>(machine, activity));
    }

    private static <T> Map<String, T> byName(List<T> all, Function<T, String> name) {
        Map<String, T> map = new LinkedHashMap<>();
        all.forEach(one -> map.putIfAbsent(name.apply(one), one));
        return map;
    }

    /** All activities of one kind, machine by machine, as the plan lists them. */
    <A extends Activity> List<Done<A>> all(Class<A> kind) {
        return activities.stream()
                .filter(done -> kind.isInstance(done.activity()))
                .map(done -> new Done<>(done.machine(), kind.cast(done.activity())))
                .toList();
    }

    /** All activities of one kind by the load, field, batch or point they are about. */
    <A extends Activity> Map<String, List<Done<A>>> allBy(Class<A> kind, Function<A, String> name) {
        Map<String, List<Done<A>>> map = new LinkedHashMap<>();
        all(kind).forEach(done -> map.computeIfAbsent(name.apply(done.activity()), any -> new ArrayList<>())
                .add(done));
        return map;
    }

    boolean isPlace(String name) {
        return fields.containsKey(name)
                || waterPoints.containsKey(name)
                || season.places().containsKey(name)
                || carried.standsAt(name);
    }

    /** A lot of which there is some, where it lies or on board of a rig to begin with. */
    boolean isLot(String name) {
        return lots.containsKey(name) || carried.isOnBoard(name);
    }

    /** Road between two places, m; empty when the season does not know it. */
    OptionalDouble metres(String from, String to) {
        if (!isPlace(from) || !isPlace(to)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(season.distances().metres(from, to));
        } catch (IllegalArgumentException e) {
            return OptionalDouble.empty();
        }
    }

    Optional<Recipe> recipeOf(Plan.Load load) {
        return Optional.ofNullable(recipes.get(load.recipe()));
    }

    /** Mix dumped on rigs, L, by the batch that the rig made last before. */
    Map<String, Double> dumpedOfBatch() {
        Map<String, Double> dumped = new LinkedHashMap<>();
        plan.rigs().forEach((id, rig) -> {
            String batch = carried.lastBatch(id);
            for (Activity activity : rig.activities()) {
                if (activity instanceof Activity.Extract extract) {
                    batch = extract.batch();
                } else if (activity instanceof Activity.Dump dump) {
                    dumped.merge(batch, dump.litres(), Double::sum);
                }
            }
        });
        return dumped;
    }

    /** The compost in an amount of mix. */
    static double kilograms(double litres, Recipe recipe) {
        return litres / recipe.mixLPerHa() * recipe.compostKgPerHa();
    }

    long start(Activity activity) {
        return calendar.seconds(activity.start());
    }

    long end(Activity activity) {
        return calendar.seconds(activity.end());
    }

    /** Seconds from start to end; below zero when they are reversed. */
    long lasts(Activity activity) {
        return end(activity) - start(activity);
    }

    void report(Rule rule, String where, String what) {
        findings.add(new Finding(rule, where, what));
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** Whether two figures are the same but for rounding; a figure that is not a number never is. */
    static boolean same(double one, double other, double tolerance) {
        return Math.abs(one - other) <= tolerance;
    }

    /** A figure as people write it. */
    static String show(double figure) {
        if (!(Math.abs(figure) < 1e12)) {
            return String.valueOf(figure);
        }
        return BigDecimal.valueOf(figure)
                .setScale(6, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
