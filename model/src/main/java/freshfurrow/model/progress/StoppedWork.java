package freshfurrow.model.progress;

import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Work that stops at a moment: what tanks hold then, and the lines that say so. A log has no line of what is in a tank; it follows from what
 * was planted of the load that was filled into it last, each hectare with as much mix as the recipe says.
 */
public final class StoppedWork {
    private final Season whole;
    private final Plan plan;
    private final LocalDateTime at;
    private final List<Planting> lacking;
    private final List<Tank> tanks = new ArrayList<>();

    private StoppedWork(Season whole, Plan plan, SeasonLog log, LocalDateTime at) {
        this.whole = whole;
        this.plan = plan;
        this.at = at;
        lacking = AsPlanned.facts(whole, plan, log, at, Set.of()).stream()
                .flatMap(done -> done.fact() instanceof Fact.Planted piece
                        ? Stream.of(new Planting(done.at(), piece))
                        : Stream.of())
                .toList();
        LoggedLoads loads = new LoggedLoads(whole, plan, LogSums.of(whole, log));
        plan.planters().keySet().forEach(planter -> tank(loads, planter).ifPresent(tanks::add));
    }

    /** A line of a log. */
    private record Planting(LocalDateTime at, Fact.Planted piece) {
        boolean isOf(String load) {
            return piece.load().filter(load::equals).isPresent();
        }
    }

    /**
     * The tank of a planter or sprayer that has a load on board, or had its last one that day.
     *
     * @param planter id of the machine
     * @param litres in it by the plan and the log, L, 0 or more
     * @param mostL as much as the log leaves room for, L
     * @param begun whether the log has a line of it; a log cannot say that nothing was planted of a load
     */
    public record Tank(String planter, String load, double litres, double mostL, boolean begun) {
        /** Of a tank; nobody reads off that less is gone. */
        private static final double AS_GOOD_AS_FULL = 0.998;

        /** Whether lines of a log can say that it holds so much, L. */
        public boolean mayHold(double otherL) {
            return otherL >= 0 && otherL <= (begun ? mostL : mostL * AS_GOOD_AS_FULL);
        }
    }

    /**
     * Work that stops.
     *
     * @param whole the season as its file tells it
     * @param log all of which counts
     * @param at not before the plan's own beginning
     */
    public static StoppedWork of(Season whole, Plan plan, SeasonLog log, LocalDateTime at) {
        return new StoppedWork(whole, plan, log, at);
    }

    /** In the order of the plan. */
    public List<Tank> tanks() {
        return List.copyOf(tanks);
    }

    private Optional<Tank> tank(LoggedLoads loads, String planter) {
        return loads.lastFull(planter, at).flatMap(full -> {
            double mostHa = loads.left(full).map(left -> left.mix().areaHa()).orElse(0.0);
            double leftHa = Math.max(0, mostHa - plantedHa(full.load()));
            double perHa = mixLPerHa(full.load());
            return leftHa > 0 || wasFilledThatDay(planter, full.load())
                    ? Optional.of(
                            new Tank(planter, full.load(), leftHa * perHa, mostHa * perHa, loads.hasLines(full.load())))
                    : Optional.empty();
        });
    }

    private boolean wasFilledThatDay(String planter, String load) {
        return plan.planters().get(planter).activities().stream()
                .anyMatch(activity -> activity instanceof Activity.Fill fill
                        && fill.load().equals(load)
                        && fill.start().toLocalDate().equals(at.toLocalDate()));
    }

    /**
     * The plantings that the log lacks of the fields that got something of those loads, so that their tanks hold what they do.
     *
     * @param leftL what is left by id of the planter, L, as its {@link Tank#mayHold}; of the others the plan's figure holds
     */
    public List<AsPlanned.Done> facts(Map<String, Double> leftL) {
        Set<String> fields = new HashSet<>();
        tanks.forEach(tank -> begun(tank).forEach(piece -> fields.add(piece.field())));
        List<Planting> plantings = new ArrayList<>(lacking);
        plantings.removeIf(planting -> !fields.contains(planting.piece().field()));
        for (Tank tank : tanks) {
            Optional.ofNullable(leftL.get(tank.planter()))
                    .ifPresent(litres -> plantMore(plantings, tank, (tank.litres() - litres) / mixLPerHa(tank.load())));
        }
        return plantings.stream()
                .sorted(Comparator.comparing(Planting::at))
                .map(planting -> new AsPlanned.Done(planting.at(), planting.piece()))
                .toList();
    }

    /** The last pieces of a load are larger or smaller than planned by so much, ha. */
    private void plantMore(List<Planting> plantings, Tank tank, double ha) {
        double more = ha;
        for (int i = plantings.size() - 1; i >= 0 && Math.abs(more) >= Plan.LEAST_HA; i--) {
            if (!plantings.get(i).isOf(tank.load())) {
                continue;
            }
            Planting last = plantings.remove(i);
            double pieceHa = Rounded.hectares(last.piece().areaHa() + more);
            more = Math.min(0, pieceHa);
            if (pieceHa >= Plan.LEAST_HA) {
                plantings.add(i, new Planting(last.at(), withArea(last.piece(), pieceHa)));
            }
        }
        if (more >= Plan.LEAST_HA) {
            List<Activity.Plant> begun = begun(tank);
            Activity.Plant last = begun.get(begun.size() - 1);
            plantings.add(new Planting(at, PlannedLoads.planted(tank.planter(), last, Rounded.hectares(more))));
        }
    }

    private static Fact.Planted withArea(Fact.Planted piece, double ha) {
        return new Fact.Planted(piece.field(), ha, piece.planter(), piece.load(), piece.withoutExtract());
    }

    /** The pieces of its load that were to begin by then, or the first where none was. */
    private List<Activity.Plant> begun(Tank tank) {
        List<Activity.Plant> pieces = plan.planters().get(tank.planter()).activities().stream()
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .filter(piece -> piece.load().equals(tank.load()))
                .toList();
        int begun = (int)
                pieces.stream().filter(piece -> piece.start().isBefore(at)).count();
        return pieces.subList(0, Math.max(1, begun));
    }

    private double plantedHa(String load) {
        return lacking.stream()
                .filter(planting -> planting.isOf(load))
                .mapToDouble(planting -> planting.piece().areaHa())
                .sum();
    }

    private double mixLPerHa(String load) {
        return plan.loads().stream()
                .filter(one -> one.id().equals(load))
                .findFirst()
                .map(one -> whole.recipe(one.recipe()).mixLPerHa())
                .orElseThrow(() -> new IllegalArgumentException("no load " + load));
    }
}
