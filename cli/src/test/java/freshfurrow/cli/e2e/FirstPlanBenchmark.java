package freshfurrow.cli.e2e;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How soon after its start the command has a plan that Ctrl-C would write, and how soon after Ctrl-C it has ended. Not part of the
 * tests, as its name keeps it out of them; docs/developing/benchmarks.md says how to run it and shows a run. Its
 * season has the usual rates, drum and batch: common practice, no source.
 */
final class FirstPlanBenchmark {
    private static final int RUNS = 7;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void measure() throws Exception {
        // after a build the first start makes an archive of classes
        Launcher.result(Launcher.start(folder, Map.of(), List.of(Launcher.path().toString(), "--version")));
        print("| fields | planters, rigs | first plan, s | slowest of " + RUNS
                + " | ended after Ctrl-C, s | slowest of " + RUNS + " |");
        print("|---|---|---|---|---|---|");
        measure(200, 8, 3);
        measure(1_000, 40, 16);
    }

    private void measure(int fields, int planters, int rigs) throws Exception {
        Path season = Files.createDirectory(folder.resolve("season" + fields));
        write(season, fields, planters, rigs);
        double[] firstPlan = new double[RUNS];
        double[] ended = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            long startNs = System.nanoTime();
            Process process = Launcher.start(
                    folder,
                    Map.of("FRESHFURROW_TERMINAL", "true"),
                    List.of(
                            "env",
                            "--default-signal=INT",
                            Launcher.path().toString(),
                            "plan",
                            season.toString(),
                            "--out",
                            folder.resolve("plan" + fields + "-" + run).toString()));
            Launcher.awaitOnErr(process, "fills");
            firstPlan[run] = secondsSince(startNs);
            long stopNs = System.nanoTime();
            Launcher.start(folder, Map.of(), List.of("kill", "-INT", Long.toString(process.pid())))
                    .waitFor();
            Launcher.result(process);
            ended[run] = secondsSince(stopNs);
        }
        Arrays.sort(firstPlan);
        Arrays.sort(ended);
        print(String.format(
                Locale.ROOT,
                "| %,d | %d, %d | %.2f | %.2f | %.2f | %.2f |",
                fields,
                planters,
                rigs,
                firstPlan[RUNS / 2],
                firstPlan[RUNS - 1],
                ended[RUNS / 2],
                ended[RUNS - 1]));
    }

    /** An invented season of fields of 10 to 22 ha around one yard, the same on every run. */
    private static void write(Path folder, int fields, int planters, int rigs) throws IOException {
        Random random = new Random(1);
        double extent = 0.1 * Math.sqrt(fields / 50.0);
        StringBuilder csv = new StringBuilder("id,area (ac),lat,lon,crop,recipe,drainage\n");
        for (int i = 0; i < fields; i++) {
            csv.append(String.format(
                    Locale.ROOT,
                    "F%d,%d,%.4f,%.4f,%s,%s,%s\n",
                    i,
                    25 + random.nextInt(30),
                    43 + (random.nextDouble() - 0.5) * extent,
                    -94 + (random.nextDouble() - 0.5) * extent,
                    random.nextInt(5) < 3 ? "corn" : "beans",
                    random.nextInt(5) == 0 ? "rich" : "standard",
                    List.of("well", "moderate", "poor").get(random.nextInt(3))));
        }
        StringBuilder yaml = new StringBuilder("""
                season: {name: Large, first: 2027-04-12, last: 2027-06-12, timezone: America/Chicago}
                hours: ["06:30/12:00", "12:30/20:30"]
                closed: [SUNDAY]
                places: {depot: {lat: 43.0, lon: -94.0}}
                recipes:
                  standard: {mix: 20 gal/ac, compost: 2 lb/ac, hold: 5 h}
                  rich: {mix: 20 gal/ac, compost: 3 lb/ac, hold: 4 h}
                crops:
                  corn: {window: 2027-04-19/2027-05-07, lateWeight: 1.5}
                  beans: {window: 2027-05-03/2027-05-20}
                fields: fields.csv
                rain:
                  - {date: 2027-04-22, from: "13:00", amount: 0.6 in}
                  - {date: 2027-05-13, from: "15:00", amount: 1.5 in}
                """);
        yaml.append(String.format(Locale.ROOT, """
                compost: {windrow: {mass: %d lb, from: 2027-04-01}}
                waterPoints:
                  tower: {lat: 43.01, lon: -94.01, flow: 120 gal/min, hoses: %d}
                  creek: {lat: 42.96, lon: -94.06, flow: 200 gal/min, hoses: %d, treatment: 10 min}
                planters:
                """, fields * 120, Math.max(1, rigs / 2), Math.max(1, rigs / 2)));
        for (int p = 0; p < planters; p++) {
            yaml.append(String.format(Locale.ROOT, """
                  P%d: {width: 40 ft, rowSpacing: 30 in, speed: 5 mph, fieldEfficiency: 0.65, tank: 600 gal,
                       roadSpeed: 18 mph, fillSetup: 5 min, moveTime: 12 min, at: depot}
                """, p));
        }
        yaml.append("rigs:\n");
        for (int r = 0; r < rigs; r++) {
            yaml.append(String.format(Locale.ROOT, """
                  R%d: {drum: 60 gal, batchCompost: 45 lb, batchTime: 15 min, cleanTime: 3 min, nurseTank: 1800 gal,
                       transferRate: 80 gal/min, roadSpeed: 40 mph, payload: 20000 lb, extractAt: field, at: depot}
                """, r));
        }
        Files.writeString(folder.resolve("fields.csv"), csv);
        Files.writeString(folder.resolve("season.yaml"), yaml);
    }

    private static double secondsSince(long startNs) {
        return (System.nanoTime() - startNs) / 1e9;
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
