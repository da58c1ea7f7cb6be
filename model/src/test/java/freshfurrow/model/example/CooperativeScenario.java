package freshfurrow.model.example;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * The files of {@code scenarios/cooperative}, from a seed: 400 fields of neighbouring farms, six planters, three rigs. Run it as a
 * program with the scenario's folder to write them again.
 */
public final class CooperativeScenario {
    private static final long SEED = 400;
    private static final int FIELDS = 400;
    private static final List<String> FIRST = List.of(
            "Alder", "Brook", "Chalk", "Dune", "Elder", "Fern", "Gravel", "Hazel", "Iris", "Juniper", "Kestrel", "Lark",
            "Marl", "Nettle", "Osier", "Plover", "Quarry", "Reed", "Sedge", "Thorn");
    private static final List<String> SECOND = List.of(
            "acre", "bank", "close", "dale", "end", "field", "gate", "head", "island", "lea", "mead", "nook", "plot",
            "ridge", "slope", "terrace", "upland", "vale", "way", "yard");
    private static final List<String> DRAINAGE = List.of("well", "moderate", "moderate", "poor");

    private CooperativeScenario() {}

    /**
     * Writes the files of the scenario.
     *
     * @param arguments the folder to write to
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Files.writeString(folder.resolve("fields.csv"), fields());
        Files.writeString(folder.resolve("season.yaml"), season());
    }

    static String fields() {
        Random random = new Random(SEED);
        StringBuilder csv = new StringBuilder("id,name,area (ac),lat,lon,crop,recipe,drainage,planters\n");
        for (int i = 0; i < FIELDS; i++) {
            boolean corn = i < FIELDS * 6 / 10;
            boolean rich = random.nextInt(5) == 0;
            String planters = random.nextInt(12) == 0 ? oneOrTwoPlanters(random) : "";
            csv.append(String.format(
                    Locale.ROOT,
                    "K%03d,%s %s,%d,%.4f,%.4f,%s,%s,%s,%s\n",
                    i + 1,
                    FIRST.get(i / SECOND.size()),
                    SECOND.get(i % SECOND.size()),
                    25 + 5 * random.nextInt(14),
                    43.0 + (random.nextDouble() - 0.5) * 0.4,
                    -94.0 + (random.nextDouble() - 0.5) * 0.5,
                    corn ? "corn" : "beans",
                    rich ? "rich" : "standard",
                    DRAINAGE.get(random.nextInt(DRAINAGE.size())),
                    planters));
        }
        return csv.toString().replace("\r\n", "\n");
    }

    private static String oneOrTwoPlanters(Random random) {
        int one = 1 + random.nextInt(6);
        int other = 1 + random.nextInt(6);
        return one == other ? "P" + one : "P" + one + " P" + other;
    }

    static String season() {
        StringBuilder yaml = new StringBuilder("""
                # An invented cooperative: 400 fields, six planters, three extraction rigs. Made by CooperativeScenario.
                season: {name: Cooperative, first: 2027-04-12, last: 2027-06-12, timezone: America/Chicago}
                hours: ["06:30/12:00", "12:30/20:30"]
                closed: [SUNDAY, 2027-05-31]
                places:
                  depot: {lat: 43.000, lon: -94.000}
                  north-shed: {lat: 43.120, lon: -94.080}
                  south-shed: {lat: 42.890, lon: -93.900}
                recipes:
                  standard: {mix: 12 gal/ac, compost: 1.6 lb/ac, hold: 6.5 h}
                  rich: {mix: 12 gal/ac, compost: 2.4 lb/ac, hold: 4 h}
                crops:
                  corn: {window: 2027-04-19/2027-05-07, recipe: standard, lateWeight: 1.5}
                  beans: {window: 2027-05-03/2027-05-20, recipe: standard}
                fields: fields.csv
                planters:
                """);
        List<String> sheds = List.of("depot", "depot", "north-shed", "north-shed", "south-shed", "south-shed");
        for (int p = 0; p < sheds.size(); p++) {
            yaml.append(
                    String.format(Locale.ROOT, """
                  P%d: {width: %d ft, rowSpacing: 30 in, speed: 5 mph, fieldEfficiency: 0.65, tank: %d gal, roadSpeed: 18 mph,
                       fillSetup: 5 min, moveTime: 12 min, flush: 15 min, at: %s}
                """, p + 1, p % 2 == 0 ? 60 : 40, p % 2 == 0 ? 700 : 500, sheds.get(p)));
        }
        yaml.append("rigs:\n");
        List<String> rigSheds = List.of("depot", "north-shed", "south-shed");
        for (int r = 0; r < rigSheds.size(); r++) {
            yaml.append(String.format(Locale.ROOT, """
                  R%d: {drum: 80 gal, batchCompost: 64 lb, batchTime: 25 min, cleanTime: 8 min, setUp: 15 min, closeUp: 10 min, nurseTank: 1500 gal,
                       transferRate: 75 gal/min, roadSpeed: 40 mph, payload: 18000 lb, bucket: 32 lb, extractAt: field, at: %s,
                       hours: ["05:30/12:00", "12:30/20:30"]}
                """, r + 1, rigSheds.get(r)));
        }
        yaml.append("""
                waterPoints:
                  tower: {lat: 43.010, lon: -94.010, flow: 120 gal/min, hoses: 2, hookUp: 2 min}
                  north-well: {lat: 43.130, lon: -94.100, flow: 60 gal/min, hoses: 1, dailyLimit: 8000 gal}
                  south-well: {lat: 42.880, lon: -93.880, flow: 60 gal/min, hoses: 1, dailyLimit: 8000 gal}
                  creek: {lat: 42.960, lon: -94.160, flow: 200 gal/min, hoses: 1, hours: ["06:00/20:00"], treatment: 10 min, hookUp: 5 min}
                compost:
                  windrow-a: {mass: 19200 lb, from: 2027-04-01}
                  windrow-b: {mass: 14400 lb, from: 2027-04-30}
                  delivery: {mass: 10800 lb, from: 2027-05-12}
                drying: {ignoreBelow: 0.1 in, well: 1 d/in, moderate: 2 d/in, poor: 3 d/in}
                rain:
                  - {date: 2027-04-22, from: "13:00", amount: 0.6 in}
                  - {date: 2027-04-29, from: "18:00", amount: 1.2 in}
                  - {date: 2027-05-06, from: "02:00", amount: 0.4 in}
                  - {date: 2027-05-13, from: "15:00", amount: 1.5 in}
                  - {date: 2027-05-22, amount: 0.9 in}
                """);
        return yaml.toString().replace("\r\n", "\n");
    }
}
