package freshfurrow.cli.text;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.plan.Plan;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a plan says of loads of which the log says less; always with the words that it was planned, not logged. */
final class PlannedBatches {
    private static final String PLANNED = "planned, not logged: ";

    private final Figures figures;
    private final Map<String, Plan.Load> loads = new HashMap<>();
    private final Map<String, Plan.Batch> batches = new HashMap<>();

    PlannedBatches(Optional<Plan> plan, Figures figures) {
        this.figures = figures;
        plan.ifPresent(known -> {
            known.loads().forEach(load -> loads.put(load.id(), load));
            known.batches().forEach(batch -> batches.put(batch.id(), batch));
        });
    }

    /** The batches planned for a load; none when the plan does not have it. */
    List<Plan.Batch> of(String load) {
        return Optional.ofNullable(loads.get(load)).stream()
                .flatMap(known -> known.batches().stream())
                .flatMap(id -> Optional.ofNullable(batches.get(id)).stream())
                .toList();
    }

    /** As {@code planned, not logged: by P1}, for a planter that was left out of an entry. */
    Optional<String> planter(Fact.Planted planted) {
        return planted.planter().isPresent()
                ? Optional.empty()
                : planted.load()
                        .flatMap(load -> Optional.ofNullable(loads.get(load)))
                        .map(load -> PLANNED + "by " + load.planter());
    }

    /** A planned batch, and its age when a piece was planted. */
    String line(Plan.Batch batch, Entry planted) {
        Duration age = Duration.between(batch.end(), planted.at());
        return line(batch)
                + (age.isNegative()
                        ? "; planned to end after the logged planting"
                        : "; if made as planned, " + Figures.span(age) + " old at its last use");
    }

    /** A planned batch. */
    String line(Plan.Batch batch) {
        return PLANNED + "batch " + batch.id() + " by " + batch.rig() + ", end " + EntryText.moment(batch.end()) + ", "
                + batch.lots().entrySet().stream()
                        .map(part -> figures.mass(part.getValue()) + " of " + part.getKey())
                        .collect(Collectors.joining(" and "));
    }
}
