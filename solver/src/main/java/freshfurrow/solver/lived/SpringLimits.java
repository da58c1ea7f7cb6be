package freshfurrow.solver.lived;

import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.compare.ComparedVariant.ResourceShare;
import freshfurrow.solver.compare.SpringFigures;
import freshfurrow.solver.limits.FreedSeason;
import java.util.List;
import java.util.Map;

/** What a resource holds back in springs: they are lived again by the same plan with it made free. */
final class SpringLimits {
    private final Season season;
    private final CompiledSeason compiled;
    private final List<List<String>> lists;
    private final int forecastDays;

    SpringLimits(CompiledSeason compiled, List<List<String>> lists, int forecastDays) {
        this.season = compiled.season();
        this.compiled = compiled;
        this.lists = lists;
        this.forecastDays = forecastDays;
    }

    /** The springs lived with that resource made free. */
    List<SpringFigures> freed(Resource free, List<GroundRecord> springs) {
        CompiledSeason freed = CompiledSeason.of(FreedSeason.of(season, free, compiled.roads()));
        SpringLife life = new SpringLife(freed, lists, forecastDays);
        return springs.stream()
                .map(spring -> free == Resource.WEATHER ? new GroundRecord("dry", Map.of(), Map.of()) : spring)
                .map(spring -> life.live(spring).figures())
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
        return springs.stream()
                .mapToDouble(spring -> spring.lateHaDays() + spring.unservedHa() * season.days())
                .sum();
    }

    private static double gone(double before, double after) {
        return before > 0 ? Math.max(0, Math.min(1, (before - after) / before)) : 0;
    }
}
