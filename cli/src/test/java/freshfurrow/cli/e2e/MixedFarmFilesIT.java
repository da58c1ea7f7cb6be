package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The mixed farm as its plan, its page, its sheets, its calendar, its tables, its map and its day sheets have it: one farm, one set of figures. */
final class MixedFarmFilesIT {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Path SCENARIO =
            Path.of("..", "scenarios", "mixed-farm").toAbsolutePath();
    private static final double TABLE_ROUNDING = 0.000_51;

    /** The farm as its scenario has it, and crossed with what else a season may be. */
    enum Farm {
        AS_IT_IS(""),
        WITH_A_SPRAYER_THAT_THE_RIG_SERVES("""
                sprayers: {boom: {on: null, tank: 300 gal, roadSpeed: 15 mph, flush: 5 min, at: yard}}
                """),
        WITH_BATCHES_AT_THE_WATER_POINT("""
                rigs: {R1: {extractAt: water}}
                """),
        WITH_A_FIELD_THAT_IS_FIXED_AND_GOES_WITHOUT("""
                fixed: {B1: {planter: P1}}
                """),
        IN_HECTARES("""
                recipes:
                  furrow: {mix: 187 L/ha, compost: 2.25 kg/ha}
                  foliar: {mix: 140 L/ha, compost: 1.69 kg/ha}
                """),
        REPLANNED("");

        private final String variant;

        Farm(String variant) {
            this.variant = variant;
        }
    }

    @TempDir
    private Path folder = Path.of("");

    private final List<String> variant = new ArrayList<>();
    private Path out = Path.of("");

    @ParameterizedTest
    @EnumSource
    void everyFileHasTheFiguresOfThePlan(Farm farm) throws Exception {
        plan(farm);
        Plan plan = PlanFile.read(out.resolve("plan.json"));
        Figures figures = new Figures(plan.season().units());
        assertThat(withoutExtract(plan))
                .as("planted without extract, which all of this is about")
                .isNotEmpty();
        assertThat(sum(withoutExtract(plan))).isCloseTo(plan.totals().untreatedHa(), within(1e-5));

        run("export");
        run("sheets");
        pageHas(plan, figures);
        tablesHave(plan);
        mapHas(plan);
        String calendar = Files.readString(out.resolve("plan.ics"))
                .replace("\r\n ", "")
                .replace("\\,", ",")
                .replace("\\;", ";");
        String sheets = Files.readString(out.resolve("sheets.html"))
                .replaceAll("<[^>]*>", "")
                .replace("&nbsp;", " ");
        assertThat(steps(sheets)).as("sheets").isEqualTo(steps(calendar)).isEqualTo(expected(plan, figures));
        StringBuilder days = new StringBuilder();
        for (LocalDate day : dates(plan)) {
            days.append(InProcess.run("day", out.toString(), day.toString()).out());
        }
        assertThat(steps(days.toString())).as("day").isEqualTo(expected(plan, figures));
        titlesAddUp(calendar, plan);
    }

    private void plan(Farm farm) throws IOException {
        try (Stream<Path> files = Files.list(SCENARIO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        if (!farm.variant.isEmpty()) {
            Files.writeString(folder.resolve("variant.yaml"), farm.variant);
            variant.addAll(List.of("--variant", folder.resolve("variant.yaml").toString()));
        }
        out = folder.resolve("plan");
        String season = folder.resolve("season.yaml").toString();
        succeed(with("plan", season, "--steps", "0", "--out", out.toString()));
        if (farm == Farm.REPLANNED) {
            log("asplanned", "--until", "2027-04-26T12:00");
            log("planted", "C2", "6ac", "--without-extract", "--at", "2027-04-26T19:00");
            log("rain", "0.5in", "--at", "2027-04-26T20:00");
            log("unfit", "C3", "--at", "2027-04-28T07:00");
            log("fit", "C3", "--at", "2027-04-29T07:00");
            succeed(with(
                    "replan",
                    season,
                    "--plan",
                    out.toString(),
                    "--now",
                    "2027-04-29T07:00",
                    "--steps",
                    "0",
                    "--spoiled",
                    "windrow"));
        }
        succeed(with("audit", season, out.toString()));
    }

    private void log(String... fact) {
        List<String> all =
                new ArrayList<>(List.of("log", folder.resolve("season.yaml").toString(), "--now", "2027-05-20T12:00"));
        all.addAll(List.of(fact));
        succeed(all);
    }

    private void run(String command) {
        succeed(command.equals("export") ? with(command, out.toString()) : List.of(command, out.toString()));
    }

    private List<String> with(String... arguments) {
        return Stream.concat(Stream.of(arguments), variant.stream()).toList();
    }

    private static void succeed(List<String> arguments) {
        Launcher.Result result = InProcess.run(arguments.toArray(String[]::new));
        assertThat(result.exitCode())
                .as("%s: %s %s", arguments, result.out(), result.err())
                .isZero();
    }

    /** As {@code PLANT 10.5 ac in B2 Hill beans without extract} or {@code SPRAY 9.0 ac in O1 Old orchard}, as often as it is done. */
    private static List<String> expected(Plan plan, Figures figures) {
        List<String> steps = new ArrayList<>();
        plan.planters().values().forEach(machine -> plantings(machine).forEach(planting -> {
            String verb = machine.work().name();
            String field = planting.field() + " " + plan.season().names().get(planting.field());
            steps.add(verb + " " + figures.area(planting.areaHa()) + " in " + field
                    + (plan.season().fixed().contains(planting.field()) ? " (fixed)" : "")
                    + (planting instanceof Activity.PlantWithout ? " without extract" : ""));
        }));
        return steps.stream().sorted().toList();
    }

    /** The same as a text has it, in lines or run together, with capitals or not. */
    private static List<String> steps(String text) {
        Matcher step = Pattern.compile(
                        "(?i)(plant|spray)(?-i)( without extract)?\\s*([<\\d.]+ (?:ac|ha) in \\w+ \\w+ \\w+(?: \\(fixed\\))?)( without extract)?")
                .matcher(text);
        return step.results()
                .map(found -> found.group(1).toUpperCase(Locale.ROOT) + " " + found.group(3)
                        + (found.group(2) == null && found.group(4) == null ? "" : " without extract"))
                .sorted()
                .toList();
    }

    private void pageHas(Plan plan, Figures figures) throws IOException {
        String html = Files.readString(out.resolve("plan.html"));
        Matcher data = Pattern.compile("id=\"plan-data\"[^>]*>(.*?)</script>", Pattern.DOTALL)
                .matcher(html);
        assertThat(data.find()).isTrue();
        JsonNode page = JSON.readTree(data.group(1));
        double without = 0;
        for (JsonNode machine : page.get("planters")) {
            Plan.PlanterPlan planned = plan.planters().get(machine.get("id").asText());
            assertThat(machine.get("work").asText()).isEqualTo(planned.work().key());
            assertThat(machine.path("on").asText()).isEqualTo(planned.on().orElse(""));
            for (JsonNode row : machine.get("activities")) {
                without +=
                        row.get(0).asText().equals("plantWithout") ? row.get(4).asDouble() : 0;
            }
        }
        assertThat(without).isCloseTo(plan.totals().untreatedHa(), within(1e-4));
        assertThat(page.get("ledger")).anySatisfy(entry -> {
            assertThat(entry.get("name").asText()).isEqualTo("without extract");
            assertThat(entry.get("value").asText())
                    .isEqualTo(figures.area(plan.totals().untreatedHa()));
        });
    }

    private void tablesHave(Plan plan) throws IOException {
        String symbol = " (" + plan.season().units().area().symbol() + ")";
        Map<String, double[]> areas = areas(plan);
        for (CSVRecord field : records("fields.csv")) {
            double[] own = areas.getOrDefault(field.get("id"), new double[2]);
            assertThat(Double.parseDouble(field.get("with extract" + symbol)))
                    .isCloseTo(own[0], within(TABLE_ROUNDING));
            assertThat(Double.parseDouble(field.get("without extract" + symbol)))
                    .isCloseTo(own[1], within(TABLE_ROUNDING));
            assertThat(Double.parseDouble(field.get("planted" + symbol)))
                    .isCloseTo(own[0] + own[1], within(TABLE_ROUNDING));
            boolean sprayed = "MO".indexOf(field.get("id").charAt(0)) >= 0;
            assertThat(field.get("work")).isEqualTo(words(sprayed, own));
        }
        for (CSVRecord load : records("loads.csv")) {
            assertThat(load.get("work")).isEqualTo(load.get("planter").equals("boom") ? "sprayed" : "planted");
        }
    }

    private static String words(boolean sprayed, double[] own) {
        if (own[0] + own[1] == 0) {
            return sprayed ? "unsprayed" : "unplanted";
        }
        return sprayed
                ? "sprayed"
                : "planted" + (own[1] == 0 ? "" : own[0] == 0 ? " without extract" : " in part without extract");
    }

    private void mapHas(Plan plan) throws IOException {
        Map<String, double[]> areas = areas(plan);
        for (JsonNode feature :
                JSON.readTree(out.resolve("plan.geojson").toFile()).get("features")) {
            JsonNode field = feature.get("properties");
            if (field.get("kind").asText().equals("field")) {
                double[] own = areas.getOrDefault(field.get("id").asText(), new double[2]);
                assertThat(field.get("withExtract").asDouble()).isCloseTo(own[0], within(TABLE_ROUNDING));
                assertThat(field.get("withoutExtract").asDouble()).isCloseTo(own[1], within(TABLE_ROUNDING));
                assertThat(field.get("done").asText())
                        .isEqualTo(words(field.path("work").asText().equals("spray"), own));
            }
        }
    }

    /** Each field of each title, to the tenth or hundredth that is shown. */
    private static void titlesAddUp(String calendar, Plan plan) {
        double shown = Pattern.compile(
                        "\\w+ \\w+ ([\\d.]+) (?:ac|ha) without extract|, ([\\d.]+) (?:ac|ha) of it without extract")
                .matcher(String.join(
                        "\n",
                        calendar.lines()
                                .filter(line -> line.startsWith("SUMMARY"))
                                .toList()))
                .results()
                .mapToDouble(found -> Double.parseDouble(found.group(1) == null ? found.group(2) : found.group(1)))
                .sum();
        assertThat(shown)
                .isCloseTo(
                        plan.season().units().area().fromHectares(plan.totals().untreatedHa()), within(0.3));
    }

    /** In the plan's unit, with extract or sprayed and without, by field. */
    private static Map<String, double[]> areas(Plan plan) {
        Map<String, double[]> areas = new TreeMap<>();
        plan.planters().values().forEach(machine -> plantings(machine)
                .forEach(planting -> areas.computeIfAbsent(planting.field(), none -> new double[2])[
                                planting instanceof Activity.PlantWithout ? 1 : 0] +=
                        plan.season().units().area().fromHectares(planting.areaHa())));
        return areas;
    }

    private static Stream<Activity.Planting> plantings(Plan.PlanterPlan machine) {
        return machine.activities().stream()
                .filter(Activity.Planting.class::isInstance)
                .map(Activity.Planting.class::cast);
    }

    private static List<Activity.Planting> withoutExtract(Plan plan) {
        return plan.planters().values().stream()
                .flatMap(MixedFarmFilesIT::plantings)
                .filter(Activity.PlantWithout.class::isInstance)
                .toList();
    }

    private static double sum(List<Activity.Planting> plantings) {
        return plantings.stream().mapToDouble(Activity.Planting::areaHa).sum();
    }

    private static Set<LocalDate> dates(Plan plan) {
        Set<LocalDate> dates = new TreeSet<>();
        plan.planters().values().forEach(machine -> plantings(machine)
                .forEach(each -> dates.add(each.start().toLocalDate())));
        return dates;
    }

    private List<CSVRecord> records(String table) throws IOException {
        String text = Files.readString(out.resolve(table)).substring(1);
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text))
                .getRecords();
    }
}
