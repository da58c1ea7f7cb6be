package freshfurrow.cli.browser;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A Chromium without a network and without a window. */
final class Browser implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Starts one. Without Chromium the tests are skipped, but on continuous integration, where it has to be there. */
    static Browser start(Path profile) {
        Optional<Path> chromium = onPath("chromium");
        Optional<Path> chromedriver = onPath("chromedriver");
        if (chromium.isEmpty() || chromedriver.isEmpty()) {
            String missing = "Chromium and its driver are not installed (Debian: chromium, chromium-driver);"
                    + " the page was not tried in a browser";
            return System.getenv("CI") == null ? abort(missing) : fail(missing);
        }
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.get().toFile());
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--host-resolver-rules=MAP * ~NOTFOUND",
                "--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(chromedriver.get().toFile())
                .build();
        Browser browser = new Browser(new ChromeDriver(service, options));
        browser.command("Network.enable", Map.of());
        browser.command(
                "Network.emulateNetworkConditions",
                Map.of("offline", true, "latency", 0, "downloadThroughput", 0, "uploadThroughput", 0));
        browser.size(1280, 900);
        return browser;
    }

    private static Optional<Path> onPath(String program) {
        return Stream.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator, -1))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
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

    /** Waits until a condition, an expression of the page's script, holds. */
    void await(String condition) {
        new WebDriverWait(driver, PATIENCE).until(any -> Boolean.TRUE.equals(js("return " + condition)));
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
        driver.quit();
    }
}
