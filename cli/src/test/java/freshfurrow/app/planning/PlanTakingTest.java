package freshfurrow.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.SeasonCopy;
import freshfurrow.app.output.PlanArchive;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.solver.stop.StopSignal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan is proposed, and taken or not. */
final class PlanTakingTest {
    @TempDir
    private Path folder = Path.of("");

    private SeasonCopy season = new SeasonCopy(Path.of(""));

    @BeforeEach
    void copySeason() {
        season = SeasonCopy.of("first-season", folder);
    }

    private ProposedPlan propose() {
        return SeasonPlanning.propose(
                season.given(), season.plans(), SeasonCopy.options(), StopSignal.untilTold(), PlanningListener.SILENT);
    }

    private Optional<String> newest() {
        return PlanArchive.own(season.plans()).newestText();
    }

    private Path take(ProposedPlan proposed, Optional<String> before) {
        return PlanTaking.take(proposed, season.given(), season.plans(), before);
    }

    @Test
    void nothingIsWrittenUntilAPlanIsTaken() {
        ProposedPlan proposed = propose();
        assertThat(season.plans()).doesNotExist();
        Path kept = take(proposed, Optional.empty());
        assertThat(kept).isEqualTo(season.plans().resolve("plans/001.json")).hasContent(proposed.text());
        assertThat(season.plans().resolve("plan.json")).hasContent(proposed.text());
        assertThat(season.plans().resolve("plan.html"))
                .hasContent(proposed.page().orElseThrow());
    }

    @Test
    void thePlanBeforeIsKept() throws IOException {
        take(propose(), Optional.empty());
        Optional<String> first = newest();
        Files.delete(season.plans().resolve("plans/001.json"));
        take(propose(), first);
        assertThat(season.plans().resolve("plans/001.json")).hasContent(first.orElseThrow());
        assertThat(season.plans().resolve("plans/002.json")).exists();
    }

    @Test
    void aPlanThatWasHeldAgainstAnotherIsNotTaken() {
        ProposedPlan slow = propose();
        take(propose(), Optional.empty());
        assertThat(Refusals.of(() -> take(slow, Optional.empty())))
                .isEqualTo(new PlanningRefusal.PlanChanged(season.plans().resolve("plan.json")));
        assertThat(season.plans().resolve("plans/002.json")).doesNotExist();
    }

    @Test
    void aPlanOfTheSeasonAsItWasIsNotTaken() {
        ProposedPlan proposed = propose();
        season.change("tank: 600 gal", "tank: 700 gal");
        assertThat(Refusals.of(() -> take(proposed, Optional.empty()))).isEqualTo(new PlanningRefusal.SeasonChanged());
        assertThat(season.plans()).doesNotExist();
    }
}
