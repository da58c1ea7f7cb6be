package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.desk.Desk;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names come from files of others; at the desk they are text and nothing else. */
@InBrowser
final class DeskHostileNamesIT {
    private static final String SCRIPT = "</script><script>document.hacked = 1</script><!-- [[data]] ]]>";
    private static final String IMAGE = "<img src=x onerror='document.hacked = 1'>";
    private static final String LETTERS = "\uD83C\uDF3D \u05E9\u05D3\u05D4 \u0639\u0631\u0628 =1+1";

    @Test
    void aNameThatWouldBeMarkupOrScriptIsShownAsItIsWritten(Browser browser, @TempDir Path folder) throws Exception {
        Path season = Desks.copyOf("first-season", folder);
        Path file = season.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("name: First season", "name: " + quoted(SCRIPT)));
        Path fields = season.resolve("fields.csv");
        List<String> lines = Files.readAllLines(fields);
        String header = lines.get(0);
        int name = List.of(header.split(",")).indexOf("name");
        for (int i = 1; i < lines.size(); i++) {
            String[] cells = lines.get(i).split(",", -1);
            cells[name] = "\"" + (i % 2 == 0 ? IMAGE : LETTERS) + "\"";
            lines.set(i, String.join(",", cells));
        }
        Files.write(fields, lines);
        Desks.plan(season);
        try (Desk desk = Desks.open(season, "2027-04-22T11:00")) {
            browser.openDesk(desk.link());
            assertThat(browser.text("#season-name")).isEqualTo(SCRIPT);
            browser.click(browser.element("[data-section=fields]"));
            browser.js("document.querySelectorAll('details').forEach((one) => { one.open = true; }); return true");
            for (String part : List.of("plan", "try", "today", "ask", "share")) {
                browser.goTo(part);
                if (part.equals("plan")) {
                    browser.driver().switchTo().frame(browser.element("iframe.plan"));
                    browser.await("'drawn' in document.documentElement.dataset");
                    assertThat(browser.js("return document.hacked === undefined"))
                            .isEqualTo(true);
                    browser.driver().switchTo().defaultContent();
                }
                if (part.equals("today")) {
                    browser.click(browser.element("[data-say=note] summary"));
                    browser.element("#note").sendKeys(IMAGE);
                    browser.click(browser.element("[data-say=note] .chief"));
                    browser.await("document.querySelector('#entries') !== null");
                    assertThat(browser.text("#entries")).contains(IMAGE);
                }
                if (part.equals("ask")) {
                    assertThat(browser.text("#why-field")).contains(IMAGE);
                    browser.click(browser.element("#why-ask"));
                    browser.await("document.querySelector('#why-answer pre') !== null");
                }
                assertThat(browser.js("return document.hacked === undefined"))
                        .as(part)
                        .isEqualTo(true);
                assertThat(browser.count("#part img")).as(part).isZero();
                assertThat(browser.count("script")).as(part).isEqualTo(1);
            }
            assertThat(browser.console()).isEmpty();
        }
    }

    /** As YAML's double-quoted text. */
    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
