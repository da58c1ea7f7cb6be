package freshfurrow.cli.browser;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.util.List;

/** What axe-core finds on the open page by its rules: WCAG 2.2 levels A and AA, and best practices. */
final class Axe {
    private Axe() {}

    static List<String> findings(Browser browser) {
        return new AxeBuilder()
                .analyze(browser.driver()).getViolations().stream()
                        .map(Axe::finding)
                        .toList();
    }

    private static String finding(Rule rule) {
        return rule.getId() + " (" + rule.getImpact() + "): " + rule.getHelp() + " "
                + rule.getNodes().stream()
                        .map(node -> node.getHtml() + " " + node.getFailureSummary())
                        .limit(3)
                        .toList();
    }
}
