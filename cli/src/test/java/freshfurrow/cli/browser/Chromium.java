package freshfurrow.cli.browser;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A process of Chromium without a window, that reaches nothing but this computer. */
record Chromium(ChromeDriver driver) implements AutoCloseable {
    /** Starts one. Without Chromium the tests are skipped, but on continuous integration, where it has to be there. */
    static Chromium start() {
        Optional<Path> chromium = onPath("chromium");
        Optional<Path> chromedriver = onPath("chromedriver");
        if (chromium.isEmpty() || chromedriver.isEmpty()) {
            String missing = "Chromium and its driver are not installed (Debian: chromium, chromium-driver);"
                    + " nothing was tried in a browser";
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
                "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(chromedriver.get().toFile())
                .build();
        return new Chromium(new ChromeDriver(service, options));
    }

    private static Optional<Path> onPath(String program) {
        return Stream.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator, -1))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    @Override
    public void close() {
        driver.quit();
    }
}
