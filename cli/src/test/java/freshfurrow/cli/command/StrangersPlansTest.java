package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Tries;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StrangersPlansTest {
    private static final int CHANGES = Tries.of(40);

    @TempDir
    private Path folder = Path.of("");

    /** Other changes every time; {@link StrangersPlansCampaign} tries one of each form. */
    @Test
    void whateverIsChangedInAPlanEveryCommandAnswersInPlainWords() throws IOException {
        StrangersPlan stranger = StrangersPlan.in(folder);
        assertThat(stranger.complaints(stranger.plan())).isEmpty();
        List<PlanChange> changes = PlanChange.ofEachForm(stranger.plan(), new Random());
        for (PlanChange change : changes.subList(0, CHANGES)) {
            assertThat(stranger.complaints(change.in(stranger.plan())))
                    .as(change.toString())
                    .isEmpty();
        }
    }

    @Test
    void whatASeasonDoesNotHaveIsToldWithItsPlaceInThePlan() throws IOException {
        StrangersPlan stranger = StrangersPlan.in(folder);
        assertThat(stranger.page(stranger.plan()).code()).isZero();
        String told = "%s; correct it there or make a new plan with 'freshfurrow plan'";
        for (String[] change : new String[][] {
            {
                "\"kind\": \"plant\", (.*?), \"field\": \"T70\"",
                "\"kind\": \"plant\", $1, \"field\": \"Z\"",
                ".field: the season has no field 'Z'"
            },
            {"\"at\": \"well\"", "\"at\": \"yard\"", ".at: the season has no water point 'yard'"},
            {"\"from\": \"well\"", "\"from\": \"moon\"", ".from: the season has no place 'moon'"},
            {"\"recipe\": \"standard\"", "\"recipe\": \"tea\"", ".recipe: the season has no recipe 'tea'"},
            {"\"lots\": \\{\"windrow\"", "\"lots\": {\"heap\"", ".lots: the season has no compost lot 'heap'"},
            {"\"finish\": \"2027", "\"finish\": \"2028", "totals.finish: 2028-"},
        }) {
            String changed = stranger.plan().replaceFirst(change[0], change[1]);
            assertThat(changed).as(change[0]).isNotEqualTo(stranger.plan());
            StrangersPlan.Run run = stranger.page(changed);
            assertThat(run.code()).isEqualTo(Freshfurrow.PROBLEM);
            assertThat(run.text().strip())
                    .startsWith(folder.resolve("plan").resolve("strange.json") + ": ")
                    .contains(change[2])
                    .endsWith(told.formatted(""))
                    .doesNotContain("\n");
        }
    }
}
