package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** Somebody who has a keyboard and nothing else, and who has to see where they are at each step. */
final class Keyboard {
    private static final int MOST_STOPS = 300;

    /** Where focus is: its outline, or that it is nowhere. A list of options or a frame brings its own. */
    private static final String UNSEEN = """
            const at = document.activeElement;
            if (at === null || at === document.body) return 'nowhere';
            const style = getComputedStyle(at);
            return style.outlineStyle === 'none' || parseFloat(style.outlineWidth) === 0 ? 'unseen at ' + at.outerHTML.slice(0, 120) : '';""";

    private final Browser browser;

    Keyboard(Browser browser) {
        this.browser = browser;
    }

    void press(CharSequence... keys) {
        new Actions(browser.driver()).sendKeys(keys).perform();
    }

    /** Over what was there: a text that one comes to by Tab is chosen. */
    void type(String text) {
        press(text);
    }

    /** Goes on with Tab to an element. */
    void to(String css) {
        go(css, () -> press(Keys.TAB));
    }

    /** Goes back with Shift and Tab to an element. */
    void backTo(String css) {
        go(css, () -> new Actions(browser.driver())
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.TAB)
                .keyUp(Keys.SHIFT)
                .perform());
    }

    private void go(String css, Runnable step) {
        for (int i = 0; i < MOST_STOPS; i++) {
            if (isAt(css)) {
                assertSeen();
                return;
            }
            step.run();
        }
        throw new AssertionError("no way to " + css + "; at " + at());
    }

    boolean isAt(String css) {
        return Boolean.TRUE.equals(browser.js("return document.activeElement.matches(arguments[0])", css));
    }

    /** After something that draws the page anew. */
    void assertSeen() {
        assertThat(browser.js(UNSEEN)).as("focus").isEqualTo("");
    }

    private String at() {
        return String.valueOf(browser.js("return document.activeElement.outerHTML.slice(0, 200)"));
    }
}
