package freshfurrow.cli.browser;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.FluentWait;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A tab of Chromium, without a network. */
final class Browser implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    /** Some states of a page last less than a second. */
    private static final Duration BETWEEN_LOOKS = Duration.ofMillis(50);

    private final ChromeDriver driver;
    private final String before;

    Browser(ChromeDriver driver) {
        this.driver = driver;
        before = driver.getWindowHandle();
        driver.switchTo().newWindow(WindowType.TAB);
        command("Network.enable", Map.of());
        offline(true);
        size(1280, 900);
        // what other tabs wrote is not this one's
        console();
    }

    /** Whether it reaches not even this computer. */
    void offline(boolean offline) {
        command(
                "Network.emulateNetworkConditions",
                Map.of("offline", offline, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    /** Opens the desk by its link, and waits until a part of it is shown. */
    Browser openDesk(String link) {
        offline(false);
        driver.get(link);
        await("'shown' in document.documentElement.dataset");
        return this;
    }

    /** Goes to a part of the desk that is open, and waits until it is shown. */
    void goTo(String part) {
        js("delete document.documentElement.dataset.shown; return true");
        click(element("#parts a[href='#" + part + "']"));
        await("document.documentElement.dataset.shown === '" + part + "'");
    }

    /** Waits until the desk has told the reader something. */
    void awaitSaid(String words) {
        waiting().withMessage(() -> "told: " + said()).until(any -> said().contains(words));
    }

    /** What is not there yet has no properties. */
    private FluentWait<WebDriver> waiting() {
        return new WebDriverWait(driver, PATIENCE, BETWEEN_LOOKS).ignoring(JavascriptException.class);
    }

    private String said() {
        return String.valueOf(js("return document.querySelector('#said').textContent"));
    }

    /** How far the page can be moved sideways, pixels. */
    Object sideways() {
        return js("return document.documentElement.scrollWidth - document.documentElement.clientWidth");
    }

    /** What the window shows, as a PNG. */
    byte[] picture() {
        return driver.getScreenshotAs(OutputType.BYTES);
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Opens a page from its file and waits until all of it is drawn. */
    Browser open(Path page) {
        driver.get(page.toUri().toString());
        await("'drawn' in document.documentElement.dataset");
        return this;
    }

    /** A file as it is printed on the paper that it asks for: a PDF. */
    byte[] printed(Path file) {
        driver.get(file.toUri().toString());
        return printed();
    }

    /** What is open, as it is printed on the paper that it asks for: a PDF. */
    byte[] printed() {
        Object pdf = driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true))
                .get("data");
        return Base64.getDecoder().decode((String) Objects.requireNonNull(pdf));
    }

    /** Waits until a condition, an expression of the page's script, holds. */
    void await(String condition) {
        waiting().withMessage(() -> condition).until(any -> Boolean.TRUE.equals(js("return " + condition)));
    }

    void size(int width, int height) {
        command(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    }

    /** As the system's setting would have it. */
    void prefers(String light) {
        command(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", light))));
    }

    Object command(String name, Map<String, Object> parameters) {
        return driver.executeCdpCommand(name, parameters);
    }

    Object js(String script, Object... arguments) {
        return Objects.requireNonNull(driver.executeScript(script, arguments), "the script returns nothing");
    }

    /** Clicks where nothing that stays at the window's edge lies above it. */
    void click(WebElement element) {
        js("arguments[0].scrollIntoView({block: 'center'}); return true", element);
        element.click();
    }

    String text(String css) {
        return element(css).getText();
    }

    WebElement element(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    int count(String css) {
        return all(css).size();
    }

    /** What the page wrote to the console: errors, refused requests, broken policies. */
    List<String> console() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    @Override
    public void close() {
        driver.close();
        driver.switchTo().window(before);
    }
}
