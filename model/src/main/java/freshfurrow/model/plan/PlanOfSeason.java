package freshfurrow.model.plan;

import freshfurrow.model.season.Season;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Whether what a plan names is in its season, and its times are of that season's days. */
public final class PlanOfSeason implements PlanVisitor {
    /** Mix may be held so long after a season's last day. */
    private static final int LONGEST_HOLD_D = 7;

    private final Path file;
    private final Season whole;
    private final Map<Named, Set<String>> known = new EnumMap<>(Named.class);

    private PlanOfSeason(Path file, Season whole, Season left) {
        this.file = file;
        this.whole = whole;
        put(Named.FIELD, whole.fields().stream().map(field -> field.id()));
        put(Named.LEFT_FIELD, left.fields().stream().map(field -> field.id()));
        put(Named.WATER_POINT, whole.waterPoints().stream().map(point -> point.id()));
        put(Named.RECIPE, whole.recipes().stream().map(recipe -> recipe.id()));
        put(Named.LOT, whole.compost().stream().map(lot -> lot.id()));
        put(Named.PLANTER, whole.applicators().stream().map(planter -> planter.id()));
        put(Named.RIG, whole.rigs().stream().map(rig -> rig.id()));
        put(Named.MACHINE, Stream.of(Named.PLANTER, Named.RIG).flatMap(kind -> ids(kind).stream()));
        put(
                Named.PLACE,
                Stream.concat(
                        whole.places().keySet().stream(),
                        Stream.of(Named.FIELD, Named.WATER_POINT).flatMap(kind -> ids(kind).stream())));
    }

    /**
     * Checks a plan that was read.
     *
     * @param file where it was read from
     * @param whole the season as its file tells it
     * @param left what was left of it when the plan was made
     * @throws PlanFileException for the first name that the season does not have, the first machine of the season that the plan lacks, or
     *     the first time that is not of the season; its message is one line
     */
    public static void check(Path file, Plan plan, Season whole, Season left) throws PlanFileException {
        var season = new PlanOfSeason(file, whole, left);
        PlanWalk.through(plan, season);
        season.hasAll(Named.PLANTER, plan.planters().keySet(), "planters");
        season.hasAll(Named.RIG, plan.rigs().keySet(), "rigs");
    }

    private void put(Named kind, Stream<String> ids) {
        Set<String> all = new HashSet<>();
        ids.forEach(all::add);
        known.put(kind, all);
    }

    private Set<String> ids(Named kind) {
        return known.getOrDefault(kind, Set.of());
    }

    private void hasAll(Named kind, Set<String> planned, String key) throws PlanFileException {
        for (String id : ids(kind)) {
            if (!planned.contains(id)) {
                throw wrong(() -> key, "the season's " + kind.noun() + " '" + id + "' is missing");
            }
        }
    }

    @Override
    public void name(Named kind, String id, Where where) throws PlanFileException {
        boolean inPlan = kind == Named.LOAD || kind == Named.BATCH;
        if (!inPlan && !ids(kind).contains(id)) {
            throw wrong(
                    where,
                    kind == Named.LEFT_FIELD && ids(Named.FIELD).contains(id)
                            ? "nothing is left to plant of the field '" + id + "'"
                            : "the season has no " + kind.noun() + " '" + id + "'");
        }
    }

    @Override
    public void time(LocalDateTime time, Where where) throws PlanFileException {
        LocalDateTime end = whole.last().plusDays(1 + LONGEST_HOLD_D).atStartOfDay();
        if (time.isBefore(whole.start()) || time.isAfter(end)) {
            throw wrong(
                    where,
                    PlanToJson.time(time) + " is not in the season, which goes from " + whole.first() + " to "
                            + whole.last());
        }
    }

    private PlanFileException wrong(Where where, String reason) {
        return new PlanFileException(file, where.path(), reason, PlanFromJson.REMEDY);
    }
}
