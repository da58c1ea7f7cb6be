package freshfurrow.solver.lived;

import freshfurrow.model.compare.ComparedVariant.ResourceShare;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.limits.FreedSeason;
import java.util.List;
import java.util.Optional;

/** What a resource holds back in springs: they are lived again by the same plan with it made free. */
final class SpringLimits {
    private final SpringPlan plan;
    private final Season season;
    private final int forecastDays;
    private final Optional<Replanning> replanning;

    SpringLimits(SpringPlan plan, int forecastDays, Optional<Replanning> replanning) {
        this.replanning = replanning;
        this.plan = plan;
        this.season = plan.season().season();
        this.forecastDays = forecastDays;
    }

    /** The springs lived with that resource made free. Where it is compost, all fields get it. */
    List<SpringFigures> freed(Resource free, SpringSource springs, List<Integer> numbers) {
        CompiledSeason freed =
                CompiledSeason.of(FreedSeason.of(season, free, plan.season().roads()));
        PlantingOrders orders = free == Resource.COMPOST
                ? PlantingOrders.withExtract(plan.orders().byPlanter())
                : plan.orders();
        SpringLife life = new SpringLife(freed, orders, forecastDays, replanning);
        return numbers.stream()
                .map(number -> life.live(
                                free == Resource.WEATHER ? SpringPlan.DRY : springs.spring(number),
                                springs.times(number))
                        .figures())
                .toList();
    }

    /** What goes away from {@code before} to {@code freed}. */
    ResourceShare share(Resource free, List<SpringFigures> before, List<SpringFigures> freed) {
        return new ResourceShare(
                free,
                gone(late(before), late(freed)),
                gone(
                        before.stream().mapToDouble(SpringFigures::waitH).sum(),
                        freed.stream().mapToDouble(SpringFigures::waitH).sum()));
    }

    private double late(List<SpringFigures> springs) {
        return springs.stream().mapToDouble(new SpringLoss(season)::haDays).sum();
    }

    private static double gone(double before, double after) {
        return before > 0 ? Math.max(0, Math.min(1, (before - after) / before)) : 0;
    }
}
