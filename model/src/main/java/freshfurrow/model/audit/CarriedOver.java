package freshfurrow.model.audit;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a season that is under way has on board before its plan begins; nothing when it has not begun. */
final class CarriedOver {
    private final Optional<Standing> standing;
    private final Map<String, Standing.Tank> tankOf = new HashMap<>();
    private final Map<String, Mix> mixOf = new HashMap<>();
    private final Set<String> batches = new HashSet<>();

    CarriedOver(Season season, Plan plan) {
        standing = season.standing();
        standing.ifPresent(machines -> {
            machines.planters().values().forEach(planter -> planter.tank()
                    .ifPresent(tank -> tankOf.put(tank.load(), tank)));
            machines.rigs().forEach((id, rig) -> rig.mix().ifPresent(mix -> mixOf.put(id, mix)));
        });
        plan.start().map(PlanStart::batches).orElse(List.of()).forEach(batch -> batches.add(batch.id()));
    }

    Optional<LocalDateTime> now() {
        return standing.map(Standing::now);
    }

    Optional<Standing.OfPlanter> planter(String id) {
        return standing.map(machines -> machines.planters().get(id));
    }

    Optional<Standing.OfRig> rig(String id) {
        return standing.map(machines -> machines.rigs().get(id));
    }

    Optional<Standing.Promise> promise(String field) {
        return standing.map(machines -> machines.promised().get(field));
    }

    double drawnL(String point) {
        return standing.map(machines -> machines.drawnL().getOrDefault(point, 0.0))
                .orElse(0.0);
    }

    boolean standsAt(String place) {
        return standing.stream()
                .anyMatch(machines -> machines.planters().values().stream()
                                .anyMatch(planter -> planter.at().equals(place))
                        || machines.rigs().values().stream()
                                .anyMatch(rig -> rig.at().equals(place)));
    }

    boolean isOnBoard(String lot) {
        return standing.stream()
                .flatMap(machines -> machines.rigs().values().stream())
                .anyMatch(rig -> rig.compostKg().containsKey(lot));
    }

    /** A load that was in a planter's tank to begin with. */
    Optional<Standing.Tank> tank(String load) {
        return Optional.ofNullable(tankOf.get(load));
    }

    boolean isBatch(String batch) {
        return batches.contains(batch);
    }

    /** Mix that was on a rig to begin with. */
    Optional<Mix> mix(String rig) {
        return Optional.ofNullable(mixOf.get(rig));
    }

    /** The batch that a rig has made last before the plan begins, if mix of it is on board. */
    String lastBatch(String rig) {
        return mix(rig).map(Mix::batches)
                .filter(made -> !made.isEmpty())
                .map(made -> made.get(made.size() - 1))
                .orElse("");
    }
}
