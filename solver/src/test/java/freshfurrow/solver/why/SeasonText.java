package freshfurrow.solver.why;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Seasons as their users write them, made up by a seed, and merge patches over them, read as the command reads them. */
final class SeasonText {
    private final Random random;
    private final Path folder;
    private final boolean untreated;

    SeasonText(long seed, Path folder) {
        this(seed, folder, false);
    }

    /** @param untreated whether fields may be planted without extract, and planters wait for half an hour at most */
    SeasonText(long seed, Path folder, boolean untreated) {
        this.untreated = untreated;
        this.random = new Random(seed);
        this.folder = folder;
    }

    /** Writes a season of 12 days with windows that many a field misses. */
    void write() throws IOException {
        StringBuilder text = new StringBuilder(1000);
        text.append("""
                season: {name: Made up, first: 2027-04-19, last: 2027-04-30, timezone: America/Chicago}
                hours: ["07:00/12:00", "12:30/19:00"]
                closed: [SUNDAY]
                places:
                  yard: {lat: 41.0, lon: -97.0}
                recipes:
                  standard: {mix: 200 L/ha, compost: 10 kg/ha, hold: %d min}
                crops:
                """.formatted(between(60, 300)));
        for (int crop = 0; crop < 3; crop++) {
            int opens = between(19, 24);
            line(text, "  crop%d: {window: 2027-04-%d/2027-04-%d}", crop, opens, opens + between(0, 3));
        }
        text.append("fields:\n");
        int fields = between(4, 8);
        for (int field = 0; field < fields; field++) {
            line(
                    text,
                    "  F%d: {area: %d ha, lat: %.3f, lon: %.3f, crop: crop%d, drainage: %s}",
                    field,
                    between(3, 18),
                    41 + random.nextDouble() / 10,
                    -97 - random.nextDouble() / 10,
                    between(0, 2),
                    List.of("well", "moderate", "poor").get(between(0, 2)));
        }
        text.append("planters:\n");
        int planters = between(1, 2);
        for (int planter = 0; planter < planters; planter++) {
            line(
                    text,
                    "  P%d: {width: %d m, rowSpacing: 0.75 m, speed: 2 m/s, fieldEfficiency: 0.6, tank: 1500 L,"
                            + " roadSpeed: 5 m/s, fillSetup: 5 min, moveTime: 10 min, at: yard%s}",
                    planter,
                    between(6, 10),
                    untreated ? ", longestWait: 30 min" : "");
        }
        line(
                text,
                "rigs:\n  R0: {drum: 160 L, batchCompost: 20 kg, batchTime: %d s, cleanTime: 3 min, nurseTank: 3000 L,"
                        + " transferRate: 4 L/s, roadSpeed: 10 m/s, extractAt: %s, at: yard}",
                20 * between(40, 120),
                random.nextBoolean() ? "field" : "water");
        line(
                text,
                "waterPoints:\n  well: {lat: 41.05, lon: -97.05, flow: %d L/s, hoses: 1%s}",
                between(1, 3),
                random.nextBoolean() ? ", dailyLimit: 6000 L" : "");
        line(
                text,
                "compost:\n  heap: {mass: %d kg, from: 2027-04-%d}\n  later: {mass: %d kg, from: 2027-04-%d}",
                between(20, 700),
                between(15, 21),
                between(20, 700),
                between(20, 28));
        line(text, "rain:\n  - {date: 2027-04-%d, from: \"10:00\", amount: %d mm}", between(18, 26), between(3, 30));
        if (untreated) {
            line(text, "goals: {untreated: 3 d}");
        }
        Files.writeString(folder.resolve("season.yaml"), text);
    }

    Season read() {
        return read(List.of());
    }

    /** The season with a merge patch (RFC 7396) over it. */
    Season patched(String patch) throws IOException {
        Path file = folder.resolve("patch.json");
        Files.writeString(file, patch);
        return read(List.of(file));
    }

    private Season read(List<Path> variants) {
        Reading reading = SeasonFiles.read(folder, variants);
        assertThat(reading).isInstanceOf(Reading.Valid.class);
        return ((Reading.Valid) reading).season();
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private static void line(StringBuilder text, String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
