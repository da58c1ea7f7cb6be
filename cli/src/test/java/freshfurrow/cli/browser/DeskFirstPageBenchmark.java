package freshfurrow.cli.browser;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How soon after the start of {@code freshfurrow desk} the browser shows the season's forms. Not part of the tests, as its name keeps it
 * out of them; docs/developing/benchmarks.md says how to run it and shows a run. The browser is open already, as it mostly is.
 */
@InBrowser
final class DeskFirstPageBenchmark {
    private static final int RUNS = Integer.getInteger("runs", 11);
    private static final Path LAUNCHER =
            Path.of("..", "freshfurrow").toAbsolutePath().normalize();

    /** The paint that has the forms is over when the second frame after they were made begins. */
    private static final String TELL_WHEN_DRAWN = """
            new MutationObserver((changes, observer) => {
              if (!document.querySelector('#section [data-path]')) return;
              observer.disconnect();
              requestAnimationFrame(() => requestAnimationFrame(() => { window.drawnMs = performance.timeOrigin + performance.now(); }));
            }).observe(document, { childList: true, subtree: true });""";

    @TempDir
    private Path folder = Path.of("");

    /** Milliseconds since the start of the command. */
    private record Start(double link, double firstPaint, double drawn) {}

    @Test
    void measure(Browser browser) throws Exception {
        browser.command("Page.addScriptToEvaluateOnNewDocument", Map.of("source", TELL_WHEN_DRAWN));
        print("| season | fields | link, s | first paint, s | forms drawn, s | slowest of " + RUNS + " | load |");
        print("|---|---|---|---|---|---|---|");
        for (String scenario : new String[] {"first-season", "spring", "cooperative"}) {
            measure(browser, scenario);
        }
    }

    private void measure(Browser browser, String scenario) throws Exception {
        Path season = Desks.copyOf(scenario, folder);
        start(browser, season); // after a build the first start makes an archive of classes
        Start[] starts = new Start[RUNS];
        for (int run = 0; run < RUNS; run++) {
            starts[run] = start(browser, season);
        }
        double[] drawn = sorted(starts, Start::drawn);
        print(String.format(
                Locale.ROOT,
                "| %s | %,d | %.2f | %.2f | %.2f | %.2f | %s |",
                scenario,
                fields(season),
                sorted(starts, Start::link)[RUNS / 2],
                sorted(starts, Start::firstPaint)[RUNS / 2],
                drawn[RUNS / 2],
                drawn[RUNS - 1],
                load()));
    }

    private static Start start(Browser browser, Path season) throws Exception {
        long startMs = System.currentTimeMillis();
        Process desk = new ProcessBuilder(LAUNCHER.toString(), "desk", season.toString(), "--no-browser")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader out = desk.inputReader(StandardCharsets.UTF_8)) {
            String line = String.valueOf(out.readLine());
            double linkMs = System.currentTimeMillis() - startMs;
            browser.openDesk(line.substring(line.indexOf("http")));
            browser.await("'drawnMs' in window");
            return new Start(
                    linkMs,
                    number(
                                    browser,
                                    "return performance.timeOrigin + performance.getEntriesByName('first-contentful-paint')[0].startTime")
                            - startMs,
                    number(browser, "return window.drawnMs") - startMs);
        } finally {
            desk.toHandle().destroy();
            desk.waitFor();
        }
    }

    private static double number(Browser browser, String script) {
        return ((Number) browser.js(script)).doubleValue();
    }

    /** In seconds, from the smallest. */
    private static double[] sorted(Start[] starts, java.util.function.ToDoubleFunction<Start> moment) {
        return Arrays.stream(starts)
                .mapToDouble(moment)
                .map(ms -> ms / 1_000)
                .sorted()
                .toArray();
    }

    private static long fields(Path season) throws Exception {
        try (var lines = Files.lines(season.resolve("fields.csv"))) {
            return lines.filter(line -> !line.isBlank() && !line.startsWith("#"))
                            .count()
                    - 1;
        }
    }

    /** Processes that run or wait for the cores, on average of the last minute; those of the measurement are among them. */
    private static String load() throws Exception {
        Path file = Path.of("/proc/loadavg");
        return Files.exists(file) ? Files.readString(file).split(" ", 2)[0] : "unknown";
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
