package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.News;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A worked plan that was followed for a while, and goes on from there. */
record UnderWay(WorkedPlan before, PlanStart start) {
    static final News NOTHING_NEW = new News(List.of(), List.of(), Set.of());

    static UnderWay at(WorkedPlan before, String clock) {
        return at(before, clock, NOTHING_NEW);
    }

    /** On the first day. */
    static UnderWay at(WorkedPlan before, String clock, News news) {
        return at(before, clock, news, SeasonLog.EMPTY);
    }

    static UnderWay at(WorkedPlan before, String clock, News news, SeasonLog log) {
        LocalDateTime now = WorkedSeason.FIRST.atTime(LocalTime.parse(clock));
        return new UnderWay(
                before,
                SoFar.of(before.season(), before.plan(), now, news, log, false).start());
    }

    Season left() {
        return start.remaining(before.season());
    }

    /** The lists gone on with; the audit has nothing against it. */
    WorkedPlan goOn() {
        Set<String> ids = left().fields().stream().map(Field::id).collect(Collectors.toSet());
        return record(before.plan().planters().values().stream()
                .map(planter -> planter.fields().stream().filter(ids::contains).toList())
                .toList());
    }

    /** Other lists, each a string of field ids with spaces between; the audit has nothing against it. */
    WorkedPlan goOnWith(String... lists) {
        return record(Arrays.stream(lists)
                .map(list -> list.isEmpty() ? List.<String>of() : List.of(list.split(" ", -1)))
                .toList());
    }

    private WorkedPlan record(List<List<String>> lists) {
        Season left = left();
        Plan plan = PlanRecorder.record(
                CompiledSeason.of(left), lists, before.plan().season(), start);
        assertThat(Audit.check(left, plan)).isEmpty();
        return new WorkedPlan(left, plan);
    }
}
