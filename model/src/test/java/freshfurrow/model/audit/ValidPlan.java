package freshfurrow.model.audit;

import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.News;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A plan that holds, and the whole season that it is of.
 *
 * @param name what is to be seen of the plan in a report
 */
record ValidPlan(String name, Season whole, Plan plan) {
    private static final String NO_LOG = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

    static ValidPlan ofScenario(String name) {
        Reading.Valid read = (Reading.Valid)
                SeasonFiles.read(Path.of("..", "scenarios", name).resolve("season.yaml"), List.of());
        return of(name, read.season(), dealt(read.season()));
    }

    static ValidPlan ofRandomSeason(long seed) {
        Season season = RandomSeasons.season(seed);
        return of("random season " + seed, season, RandomSeasons.lists(season, seed));
    }

    private static ValidPlan of(String name, Season season, List<List<String>> lists) {
        return new ValidPlan(name, season, PlanRecorder.record(CompiledSeason.of(season), lists, source(season)));
    }

    /** What is left of it at a moment at which it rains, a planter and a rig are down and it begins anew. */
    ValidPlan replanned(LocalDateTime now) {
        News news = new News(
                List.of(new Rain(now.toLocalDate(), now.toLocalTime().toSecondOfDay(), 9)),
                List.of(
                        new Outage(whole.rigs().get(0).id(), now.minusHours(1), now.plusHours(20)),
                        new Outage(whole.applicators().get(0).id(), now.plusDays(2), now.plusDays(3))),
                Set.of());
        PlanStart start = SoFar.of(whole, plan, now, news, SeasonLog.EMPTY, false)
                .start()
                .withPromises(Promises.of(plan, now, whole.goals().steadyDays()))
                .withLog(NO_LOG);
        Season left = start.remaining(whole);
        Set<String> ids = left.fields().stream().map(Field::id).collect(Collectors.toSet());
        List<List<String>> lists = plan.planters().values().stream()
                .map(planter -> planter.fields().stream().filter(ids::contains).toList())
                .toList();
        return new ValidPlan(
                name + " from " + now, whole, PlanRecorder.record(CompiledSeason.of(left), lists, source(left), start));
    }

    private static Plan.SeasonSource source(Season season) {
        return Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64));
    }

    private static List<List<String>> dealt(Season season) {
        List<List<String>> lists = new ArrayList<>();
        season.applicators().forEach(planter -> lists.add(new ArrayList<>()));
        int next = 0;
        for (Field field : season.fields()) {
            do {
                next = (next + 1) % lists.size();
            } while (!field.allows(season.applicators().get(next)));
            lists.get(next).add(field.id());
        }
        return lists;
    }

    static List<ValidPlan> all() {
        List<ValidPlan> all = new ArrayList<>();
        ValidPlan first = ofScenario("first-season");
        all.add(first.replanned(LocalDateTime.parse("2027-04-22T10:30")));
        for (long seed : List.of(2L, 3L, 5L, -5L)) {
            ValidPlan random = ofRandomSeason(seed);
            all.add(random);
            all.add(random.replanned(random.whole().first().plusDays(2).atTime(9, 20)));
        }
        return all;
    }

    @Override
    public String toString() {
        return name;
    }
}
