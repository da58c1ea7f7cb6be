package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One change of each form there is to a plan, for every command that reads one: some 5,000 changes, 45,000 commands and ten minutes, too much
 * for every build. Run it with {@code -Dtest=StrangersPlansCampaign}, and {@code -Dseed=N} for other entries of lists.
 */
final class StrangersPlansCampaign {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void whateverIsChangedInAPlanEveryCommandAnswersInPlainWords() throws IOException {
        StrangersPlan stranger = StrangersPlan.in(folder);
        List<String> complaints = new ArrayList<>();
        for (PlanChange change : PlanChange.ofEachForm(stranger.plan(), new Random(Long.getLong("seed", 1)))) {
            stranger.complaints(change.in(stranger.plan())).forEach(what -> complaints.add(change + "\n" + what));
        }
        assertThat(complaints).isEmpty();
    }
}
