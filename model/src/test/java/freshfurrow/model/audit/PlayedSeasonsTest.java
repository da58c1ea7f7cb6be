package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.PlanFileException;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The audit on seasons played out by the timeline: it has nothing against them, and survives them broken at random. */
class PlayedSeasonsTest {
    private static final Pattern FIGURE = Pattern.compile("(?<=\": )-?[0-9.]+");

    private static final Pattern VALUE = Pattern.compile("\"[^\"]*\"(?!:)|(?<=: )-?[0-9.]+");

    @Property(tries = 300)
    void aSeasonPlayedOutHolds(@ForAll long seed) {
        Season season = RandomSeasons.season(seed);
        assertThat(Audit.check(season, played(season, seed))).isEmpty();
    }

    @Property(tries = 300)
    void aSeasonPlayedOutHoldsWherePeopleJudgedTheGround(@ForAll long seed) {
        Season season = RandomSeasons.withJudgedGround(RandomSeasons.season(seed), seed);
        assertThat(Audit.check(season, played(season, seed))).isEmpty();
    }

    @Property(tries = 200)
    void aSeasonOfPlantersAndSprayersHolds(@ForAll long seed) throws Exception {
        Season season = RandomSeasons.mixed(seed, 12);
        assertThat(Audit.check(season, read(PlanFile.toJson(played(season, seed)))))
                .isEmpty();
    }

    @Property(tries = 300)
    void aSeasonPlayedOutHoldsWhereFieldsAreFixed(@ForAll long seed) throws Exception {
        Season season = RandomSeasons.withFixedFields(RandomSeasons.season(seed), seed);
        Plan plan = PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.orders(season, RandomSeasons.lists(season, seed)),
                SeasonSource.of(season, "season.yaml", "00"));
        assertThat(Audit.check(season, plan)).isEmpty();
        assertThat(read(PlanFile.toJson(plan)).season().fixed())
                .isEqualTo(plan.season().fixed());
    }

    @Property(tries = 300)
    void aSeasonWithSprayersMountedOnRigsHolds(@ForAll long seed) throws Exception {
        Season season = RandomSeasons.withMounted(seed, 12);
        assertThat(Audit.check(season, read(PlanFile.toJson(played(season, seed)))))
                .isEmpty();
    }

    /** A field that awaited compost is given up, the planter moves on and awaits it at the next. */
    @Example
    void aWaitForCompostBeginsWhenThePlanterStandsWhereItWaits() {
        aSeasonPlayedOutHolds(1120);
    }

    @Property(tries = 100)
    void aPlanReadBackFromItsFileHoldsToo(@ForAll long seed) throws Exception {
        Season season = RandomSeasons.season(seed);
        assertThat(Audit.check(season, read(PlanFile.toJson(played(season, seed)))))
                .isEmpty();
    }

    /** What is left of a field takes less than half a gram of compost. */
    @Example
    void aBatchTakesNoLessThanAPlanFileCanTell() throws Exception {
        aPlanReadBackFromItsFileHoldsToo(125233);
    }

    @Property(tries = 300)
    void noPlanHoweverBrokenMakesTheAuditFail(@ForAll long seed) throws IOException {
        Season season = RandomSeasons.season(seed);
        String broken = shuffled(PlanFile.toJson(played(season, seed)), new Random(seed));
        try {
            assertThat(Audit.check(season, read(broken))).isNotNull();
        } catch (PlanFileException e) {
            assertThat(e.getMessage()).isNotBlank();
        }
    }

    @Property(tries = 300)
    void aFigureThatIsChangedIsCaught(@ForAll long seed) throws Exception {
        Season season = RandomSeasons.season(seed);
        String text = PlanFile.toJson(played(season, seed));
        List<MatchResult> figures = FIGURE.matcher(text).results().toList();
        MatchResult figure = figures.get(new Random(seed).nextInt(figures.size()));
        BigDecimal changed = new BigDecimal(figure.group()).add(BigDecimal.valueOf(1000));
        String wrong = text.substring(0, figure.start()) + changed.toPlainString() + text.substring(figure.end());
        assertThat(Audit.check(season, read(wrong))).as(wrong).isNotEmpty();
    }

    @Property(tries = 100)
    void aPlanOfAnotherSeasonIsCaught(@ForAll long seed) {
        Plan plan = played(RandomSeasons.season(seed), seed);
        assertThat(Audit.check(RandomSeasons.season(seed + 1), plan)).isNotEmpty();
    }

    private static Plan played(Season season, long seed) {
        return PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.orders(season, RandomSeasons.lists(season, seed)),
                new SeasonSource(season.name(), "season.yaml", "00", DisplayUnits.METRIC));
    }

    /** Some values of the text changed for others from elsewhere in it. */
    private static String shuffled(String text, Random random) {
        List<String> values = new ArrayList<>(
                VALUE.matcher(text).results().map(MatchResult::group).toList());
        int changes = 1 + random.nextInt(20);
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(values.size());
            String other = values.get(random.nextInt(values.size()));
            if (values.get(at).length() == other.length() || random.nextInt(10) == 0) {
                values.set(at, other);
            }
        }
        var next = values.iterator();
        return VALUE.matcher(text).replaceAll(match -> Matcher.quoteReplacement(next.next()));
    }

    private static Plan read(String text) throws IOException, PlanFileException {
        Path file = Files.createTempFile("plan", ".json");
        try {
            return PlanFile.readToAudit(Files.writeString(file, text));
        } finally {
            Files.delete(file);
        }
    }
}
