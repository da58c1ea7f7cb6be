package freshfurrow.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.output.PageOutcome;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.app.time.Stage;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.Progress;
import freshfurrow.solver.stop.StopSignal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season planned, and planned again, without any command. */
final class SeasonPlanningTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "first-season");
    private static final SeasonClock IN_ANOTHER_YEAR =
            new SeasonClock(Clock.fixed(Instant.parse("2020-01-01T00:00:00Z"), ZoneOffset.UTC));
    private static final News NO_NEWS = new News(List.of(), List.of(), Set.of());

    @TempDir
    private Path folder = Path.of("");

    private GivenSeason season = new GivenSeason(Path.of(""), List.of());

    /** Keeps what it hears, but for how far the search is. */
    private static final class Heard implements PlanningListener {
        private final List<String> all = new CopyOnWriteArrayList<>();

        @Override
        public void begins(Season season) {
            all.add("begins with " + season.fields().size());
        }

        @Override
        public void at(Progress progress) {}

        @Override
        public void searched() {
            all.add("searched");
        }
    }

    @BeforeEach
    void copySeason() throws IOException {
        try (var files = Files.list(SCENARIO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
        season = new GivenSeason(folder, List.of());
    }

    @Test
    void aPlanIsWrittenBesideItsSeasonAndHandedOut() throws Exception {
        Heard heard = new Heard();

        Planned planned = plan(StopSignal.untilTold(), heard);

        assertThat(planned.file()).isEqualTo(folder.resolve("plan").resolve("plan.json"));
        assertThat(planned.file()).hasContent(PlanFile.toJson(planned.plan()));
        assertThat(planned.page()).isEqualTo(PageOutcome.WRITTEN);
        assertThat(folder.resolve("plan").resolve("plan.html")).isNotEmptyFile();
        assertThat(planned.end()).isEqualTo(new PlanningEnd(false, true, true));
        assertThat(heard.all)
                .containsExactly("begins with " + planned.season().fields().size(), "searched");
        assertThat(planned.taken().stages().keySet())
                .containsExactly(
                        Stage.READING,
                        Stage.SEARCH,
                        Stage.BOUNDS,
                        Stage.LIMITS,
                        Stage.AUDIT,
                        Stage.PAGE,
                        Stage.WRITING);
    }

    @Test
    void whoDoesNotWantToWaitStillGetsAPlan() {
        StopSignal stop = StopSignal.untilTold();
        stop.set();

        Planned planned = plan(stop, PlanningListener.SILENT);

        assertThat(planned.end().stopped()).isTrue();
        assertThat(planned.file()).isNotEmptyFile();
    }

    @Test
    void aSeasonWithProblemsIsNotPlanned() throws IOException {
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("compost:", "kompost:"));
        Heard heard = new Heard();

        assertThat(Refusals.of(() -> plan(StopSignal.untilTold(), heard)))
                .isInstanceOf(InputRefusal.ProblemsFound.class);
        assertThat(heard.all).isEmpty();
        assertThat(folder.resolve("plan")).doesNotExist();
    }

    @Test
    void aPlanThatIsThereIsInTheWayBeforeAnythingIsPlanned() {
        plan(StopSignal.untilTold(), PlanningListener.SILENT);
        Heard heard = new Heard();

        assertThat(Refusals.of(() -> plan(StopSignal.untilTold(), heard)))
                .isInstanceOfSatisfying(OutputRefusal.Obstructed.class, obstructed -> {
                    assertThat(obstructed.unwritten()).isEqualTo(OutputRefusal.Unwritten.PLANNING);
                    assertThat(obstructed.obstructions()).hasSize(2);
                });
        assertThat(heard.all).isEmpty();
    }

    @Test
    void afterRainTheRestIsPlannedAgainAndEveryPlanKept() throws Exception {
        Planned planned = plan(StopSignal.untilTold(), PlanningListener.SILENT);
        LocalDateTime rainBegins = planned.plan().totals().finish().minusHours(3);
        News rain = new News(
                List.of(new Rain(
                        rainBegins.toLocalDate(), rainBegins.toLocalTime().toSecondOfDay(), 20)),
                List.of(),
                Set.of());

        Replanned replanned = replan(Optional.of(rainBegins), rain);

        Path plans = folder.resolve("plan").resolve("plans");
        assertThat(replanned.kept()).isEqualTo(plans.resolve("002.json"));
        assertThat(plans.resolve("001.json")).exists();
        assertThat(PlanFile.read(replanned.file()).start().orElseThrow().now()).isEqualTo(rainBegins);
        assertThat(replanned.moment()).isEqualTo(new PlanningMoment(rainBegins, PlanningMoment.Source.SAID));
        assertThat(replanned.changes()).isNotEmpty();
        assertThat(replanned.soFar().start().planted()).isNotEmpty();
    }

    @Test
    void withoutAnythingNewThePlanStaysAsItIs() {
        Planned planned = plan(StopSignal.untilTold(), PlanningListener.SILENT);

        Replanned replanned = replan(Optional.of(planned.season().first().atStartOfDay()), NO_NEWS);

        planned.plan().planters().forEach((id, list) -> assertThat(
                        replanned.plan().planters().get(id))
                .extracting(after -> after.fields())
                .isEqualTo(list.fields()));
        assertThat(replanned.taken().stages()).doesNotContainKey(Stage.SEARCH);
    }

    @Test
    void newsAreOfMachinesAndLotsOfTheSeason() {
        Planned planned = plan(StopSignal.untilTold(), PlanningListener.SILENT);
        LocalDate first = planned.season().first();
        Outage outage = new Outage("R9", first.atStartOfDay(), first.plusDays(1).atStartOfDay());

        assertThat(Refusals.of(() -> replan(Optional.empty(), new News(List.of(), List.of(outage), Set.of()))))
                .isInstanceOfSatisfying(PlanningRefusal.UnknownMachine.class, unknown -> {
                    assertThat(unknown.id()).isEqualTo("R9");
                    assertThat(unknown.known()).contains("P1", "R1");
                });
        assertThat(Refusals.of(() -> replan(Optional.empty(), new News(List.of(), List.of(), Set.of("peat", "ash")))))
                .isInstanceOfSatisfying(PlanningRefusal.UnknownLot.class, unknown -> assertThat(unknown.id())
                        .isEqualTo("ash"));
    }

    @Test
    void aLogThatIsNamedHasToBeThere() {
        plan(StopSignal.untilTold(), PlanningListener.SILENT);
        Path log = folder.resolve("none.csv");

        assertThat(Refusals.of(() -> replan(Optional.empty(), NO_NEWS, Optional.of(log))))
                .isEqualTo(new InputRefusal.NoLog(log));
    }

    private Planned plan(StopSignal stop, PlanningListener listener) {
        return SeasonPlanning.plan(new PlanningOrder(season, Optional.empty(), options(), true, false), stop, listener);
    }

    private Replanned replan(Optional<LocalDateTime> now, News news) {
        return replan(now, news, Optional.empty());
    }

    private Replanned replan(Optional<LocalDateTime> now, News news, Optional<Path> log) {
        ReplanningOrder order = new ReplanningOrder(
                season,
                new GivenPlan(folder.resolve("plan")),
                false,
                now,
                news,
                log,
                false,
                options(),
                Optional.empty(),
                true,
                false);
        return SeasonReplanning.replan(order, IN_ANOTHER_YEAR, StopSignal.untilTold(), PlanningListener.SILENT);
    }

    private static PlanningOptions options() {
        return new PlanningOptions(Optional.empty(), OptionalLong.of(20), 1);
    }
}
