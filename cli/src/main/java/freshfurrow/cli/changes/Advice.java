package freshfurrow.cli.changes;

import freshfurrow.cli.day.MixOrder;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.text.CrewClock;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.OrderText;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What to do in the next hours: with mix that is made already, and which batches not to start. */
final class Advice {
    private static final int HOURS = 24;

    private final Plan plan;
    private final CrewClock clock;
    private final OrderText orders;
    private final LocalDateTime now;
    private final List<String> lines = new ArrayList<>();

    private Advice(Season left, Plan plan, Standing standing) {
        this.plan = plan;
        this.now = standing.now();
        Figures figures = new Figures(left.units());
        clock = figures.crewClock(now.toLocalDate());
        orders = new OrderText(new PlanIndex(plan), figures, clock);
    }

    /** Advice for what is left of a season, a line an entry; empty when there is none to give. */
    static List<String> lines(Season left, Plan plan, Plan before) {
        return left.standing()
                .map(standing -> {
                    Advice advice = new Advice(left, plan, standing);
                    MixOrder.of(plan).forEach(order -> advice.lines.add(advice.orders.text(order)));
                    advice.batchesNotToStart(before);
                    return List.copyOf(advice.lines);
                })
                .orElse(List.of());
    }

    /** Batches that the plan before begins in the next hours, before its rig begins any now. */
    private void batchesNotToStart(Plan before) {
        before.rigs().keySet().forEach(rig -> {
            Optional<LocalDateTime> first = batchesOf(plan, rig).findFirst();
            int cancelled = (int) batchesOf(before, rig)
                    .filter(start -> start.isBefore(now.plusHours(HOURS)))
                    .filter(start -> first.isEmpty() || start.isBefore(first.get()))
                    .count();
            if (cancelled > 0) {
                lines.add(rig + ": make no more batches"
                        + first.map(start -> " until about " + clock.about(start))
                                .orElse("")
                        + (cancelled == 1
                                ? " (1 planned batch is cancelled)"
                                : " (" + cancelled + " planned batches are cancelled)"));
            }
        });
    }

    private Stream<LocalDateTime> batchesOf(Plan of, String rig) {
        return of.batches().stream()
                .filter(batch -> batch.rig().equals(rig) && !batch.start().isBefore(now))
                .map(Plan.Batch::start)
                .sorted();
    }
}
