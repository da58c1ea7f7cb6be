package freshfurrow.model.plan;

import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.progress.News;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What is asked of a plan file is what every plan that is made has, also in the middle of a season, twice. */
class PlansMadeAreWholeTest {
    private static final News NOTHING_NEW = new News(List.of(), List.of(), Set.of());

    @Property(tries = 100)
    void aPlanIsWholeAndSoAreThoseMadeOfWhatIsLeftOfItsSeason(@ForAll long seed) throws Exception {
        Season whole = RandomSeasons.season(seed);
        Random random = new Random(seed);
        Plan plan = PlanRecorder.record(
                CompiledSeason.of(whole),
                RandomSeasons.lists(whole, seed),
                SeasonSource.of(whole, "season.yaml", "00"));
        assertWhole(plan, whole);
        LocalDateTime now = whole.first().atStartOfDay();
        for (int again = 0; again < 2; again++) {
            now = now.plusSeconds(random.nextInt(3 * 86_400));
            if (now.isAfter(whole.last().atTime(23, 59))) {
                return;
            }
            PlanStart start = SoFar.of(whole, plan, now, NOTHING_NEW, SeasonLog.EMPTY, false)
                    .start();
            Season left = start.remaining(whole);
            List<String> ids = left.fields().stream().map(field -> field.id()).toList();
            List<List<String>> lists = plan.planters().values().stream()
                    .map(planter ->
                            planter.fields().stream().filter(ids::contains).toList())
                    .toList();
            plan = PlanRecorder.record(CompiledSeason.of(left), lists, plan.season(), start);
            assertWhole(plan, whole);
        }
    }

    private static void assertWhole(Plan plan, Season whole) throws Exception {
        Path file = Files.createTempFile("plan", ".json");
        try {
            Files.writeString(file, PlanFile.toJson(plan));
            Plan read = PlanFile.read(file);
            PlanOfSeason.check(
                    file,
                    read,
                    whole,
                    read.start().map(start -> start.remaining(whole)).orElse(whole));
        } finally {
            Files.delete(file);
        }
    }
}
