package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.desk.Desk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season whose times vary and whose plans are judged by money, at the desk. */
@InBrowser
final class DeskVaryingTimesIT {
    private static final String KEYS = """
            spread: {}
            goals: {by: money}
            costs: {currency: USD, labour: 24 /h, fuelRoad: 0.60 /mi, compost: 0.08 /lb, late: 4 /ac/d, unserved: 300 /ac}
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void itsFormsArePlainAndItsPlanSaysHowSureItIsAndWhatItCosts(Browser tab) throws IOException {
        Path season = Desks.copyOf("first-season", folder);
        Files.writeString(season.resolve("season.yaml"), KEYS, StandardOpenOption.APPEND);
        Desks.plan(season);
        try (Desk desk = Desks.open(season, "2027-04-22T11:00")) {
            Browser browser = tab.openDesk(desk.link());
            for (int width : new int[] {1_280, 390}) {
                browser.size(width, 900);
                browser.goTo("season");
                browser.click(browser.element("[data-section=spread]"));
                assertThat(browser.sideways()).isEqualTo(0L);
                Pictures.keep("desk-spread-" + width, browser);
                browser.click(browser.element("[data-section=costs]"));
                Pictures.keep("desk-costs-" + width, browser);
                browser.goTo("plan");
                Pictures.keep("desk-varying-plan-" + width, browser);
                assertThat(browser.text("main")).contains("Bill", "How sure", "Stale");
            }
            assertThat(browser.console()).isEmpty();
        }
    }
}
