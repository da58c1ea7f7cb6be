package freshfurrow.model.plan;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.ClockFace;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.DistanceUnit;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.quantity.VolumeUnit;
import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.season.Work;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads a plan file key by key and stops at the first thing that is wrong. */
final class PlanFromJson {
    static final String REMEDY = "correct it there or make a new plan with 'freshfurrow plan'";

    static final int LARGEST_MB = 64;
    private static final int DEEPEST = 32;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .build())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private static final Map<String, AreaUnit> AREAS = byName(AreaUnit.values(), AreaUnit::symbol);
    private static final Map<String, VolumeUnit> VOLUMES = byName(VolumeUnit.values(), VolumeUnit::symbol);
    private static final Map<String, MassUnit> MASSES = byName(MassUnit.values(), MassUnit::symbol);
    private static final Map<String, DistanceUnit> DISTANCES = byName(DistanceUnit.values(), DistanceUnit::symbol);
    private static final Map<String, Work> WORKS = byName(Work.values(), Work::key);
    private static final Map<String, ClockFace> CLOCKS = byName(ClockFace.values(), ClockFace::symbol);

    private PlanFromJson() {}

    static Plan read(Path file) throws PlanFileException {
        return read(file, parse(file));
    }

    /** @param file what the text is for, to name it in problems */
    static Plan read(Path file, String text) throws PlanFileException {
        try {
            return read(file, MAPPER.readTree(text));
        } catch (JsonProcessingException e) {
            throw new PlanFileException(file, "", "is not JSON: " + e.getOriginalMessage(), REMEDY);
        }
    }

    private static Plan read(Path file, JsonNode tree) throws PlanFileException {
        JsonPlace top = new JsonPlace(file, JsonPath.TOP, tree);
        String format = top.text("format");
        if (!format.equals(PlanFile.FORMAT)) {
            throw new PlanFileException(
                    file,
                    "format",
                    "'" + format.substring(0, Math.min(60, format.length())) + "' is not a format this version reads",
                    "it reads " + PlanFile.FORMAT);
        }
        return plan(top);
    }

    private static JsonNode parse(Path file) throws PlanFileException {
        try {
            return MAPPER.readTree(bytes(file));
        } catch (NoSuchFileException e) {
            throw new PlanFileException(file, "", "there is no such file", "make a plan with 'freshfurrow plan'");
        } catch (JsonProcessingException e) {
            JsonLocation where = e.getLocation();
            throw new PlanFileException(
                    file,
                    where == null ? "" : "line " + where.getLineNr() + ", column " + where.getColumnNr(),
                    "is not JSON: " + firstSentence(e.getOriginalMessage()),
                    REMEDY);
        } catch (IOException e) {
            throw new PlanFileException(file, "", "cannot be read: " + e.getMessage(), "check its permissions");
        }
    }

    private static byte[] bytes(Path file) throws IOException, PlanFileException {
        if (Files.isDirectory(file)) {
            throw new PlanFileException(file, "", "is a folder", "give the plan file in it, such as plan.json");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new PlanFileException(file, "", "is not an ordinary file", "give a plan file, such as plan.json");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            // What a file says of its size need not be so, as of those that the system makes up.
            byte[] bytes = stream.readNBytes(LARGEST_MB << 20);
            if (stream.read() >= 0 || bytes.length == LARGEST_MB << 20) {
                long mb = Math.max(LARGEST_MB, Files.size(file) >> 20);
                throw new PlanFileException(
                        file, "", "is " + mb + " MB large", "a plan file has less than " + LARGEST_MB + " MB");
            }
            return bytes;
        }
    }

    private static String firstSentence(String message) {
        String line = message.lines().findFirst().orElse("");
        return line.length() <= 200 ? line : line.substring(0, 200) + "…";
    }

    private static Plan plan(JsonPlace top) throws PlanFileException {
        top.withAndPerhaps(
                List.of("bounds", "limits", "start", "chances"),
                "format",
                "season",
                "score",
                "totals",
                "planters",
                "rigs",
                "loads",
                "batches",
                "unserved");
        return new Plan(
                season(top.at("season")),
                PlanRecords.SCORE.read(top.at("score")),
                PlanRecords.TOTALS.read(top.at("totals")),
                top.map("planters", PlanFromJson::planter),
                top.map("rigs", PlanFromJson::rig),
                top.list("loads", PlanRecords.LOAD::read),
                top.list("batches", PlanRecords.BATCH::read),
                top.list("unserved", PlanRecords.UNSERVED::read),
                top.has("bounds") ? Optional.of(PlanRecords.BOUNDS.read(top.at("bounds"))) : Optional.empty(),
                top.has("limits") ? top.list("limits", PlanRecords.LIMIT::read) : List.of(),
                top.has("start") ? Optional.of(StartFromJson.read(top.at("start"))) : Optional.empty(),
                top.has("chances") ? Optional.of(PlanRecords.CHANCES.read(top.at("chances"))) : Optional.empty());
    }

    private static Plan.SeasonSource season(JsonPlace place) throws PlanFileException {
        place.withAndPerhaps(List.of("clock", "names", "fixed", "clockChanges"), "name", "file", "sha256", "units");
        return new Plan.SeasonSource(
                place.text("name"),
                place.fileName("file"),
                place.text("sha256"),
                place.has("clock") ? units(place).withClock(place.oneOf("clock", CLOCKS)) : units(place),
                place.has("names") ? place.map("names", JsonPlace::asText) : Map.of(),
                place.has("clockChanges") ? place.list("clockChanges", PlanFromJson::clockChange) : List.of(),
                place.has("fixed") ? place.list("fixed", JsonPlace::asText) : List.of());
    }

    private static DisplayUnits units(JsonPlace place) throws PlanFileException {
        JsonPlace units = place.at("units").with("area", "volume", "mass", "distance");
        return new DisplayUnits(
                units.oneOf("area", AREAS),
                units.oneOf("volume", VOLUMES),
                units.oneOf("mass", MASSES),
                units.oneOf("distance", DISTANCES));
    }

    private static ClockChanges.Change clockChange(JsonPlace place) throws PlanFileException {
        JsonPlace change = place.with("at", "then");
        return new ClockChanges.Change(change.time("at"), change.time("then"));
    }

    private static Plan.PlanterPlan planter(JsonPlace place) throws PlanFileException {
        place.withAndPerhaps(List.of("work", "on", "withoutExtract"), "tankL", "fields", "activities");
        return new Plan.PlanterPlan(
                place.has("work") ? place.oneOf("work", WORKS) : Work.PLANT,
                place.has("on") ? Optional.of(place.text("on")) : Optional.empty(),
                place.number("tankL"),
                place.list("fields", JsonPlace::asText),
                place.listIfAny("withoutExtract", JsonPlace::asText),
                place.list("activities", ActivityJson::read));
    }

    private static Plan.RigPlan rig(JsonPlace place) throws PlanFileException {
        place.withAndPerhaps(List.of("nurseTankL", "payloadKg", "bucketKg"), "activities");
        return new Plan.RigPlan(
                place.numberIfAny("nurseTankL"),
                place.numberIfAny("payloadKg"),
                place.numberIfAny("bucketKg"),
                place.list("activities", ActivityJson::read));
    }

    static <T> Map<String, T> byName(T[] values, Function<T, String> name) {
        Map<String, T> all = new LinkedHashMap<>();
        Arrays.stream(values).forEach(value -> all.put(name.apply(value), value));
        return all;
    }
}
