package freshfurrow.cli.compare;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.ComparedVariant;
import freshfurrow.model.compare.Foresight;
import freshfurrow.model.compare.LivedVariant;
import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.compare.TriedReserve;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.ClockFace;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.DistanceUnit;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.quantity.VolumeUnit;
import freshfurrow.model.season.Work;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/** Reads the file of a comparison: its rules and its rows. The rest of it is worked out from these again. */
public final class ComparisonReader {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            .build();

    private ComparisonReader() {}

    /**
     * The comparison in a file.
     *
     * @throws IOException when there is no such file, or it is not a comparison; its message is one line without the file's name
     */
    public static ComparedSprings read(Path file) throws IOException {
        JsonNode top;
        try {
            top = MAPPER.readTree(Files.readAllBytes(file));
        } catch (JsonProcessingException e) {
            throw new IOException("is not JSON: " + e.getOriginalMessage(), e);
        }
        try {
            if (!ComparisonFile.FORMAT.equals(text(top, "format"))) {
                throw new IllegalArgumentException(
                        "is of the format " + text(top, "format") + ", not " + ComparisonFile.FORMAT);
            }
            return compared(top);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new IOException(String.valueOf(e.getMessage()), e);
        }
    }

    private static ComparedSprings compared(JsonNode top) {
        LivingRules rules = rules(at(top, "rules"));
        List<Integer> numbers = new ArrayList<>();
        JsonNode variants = at(top, "variants");
        at(at(variants, 0), "rows").forEach(row -> numbers.add((int) number(row, 0, rules)));
        List<ComparedVariant> read = new ArrayList<>();
        variants.forEach(variant -> read.add(variant(variant, numbers, rules)));
        return new ComparedSprings(rules, numbers, read);
    }

    private static LivingRules rules(JsonNode rules) {
        DisplayUnits units = units(at(rules, "units"));
        return new LivingRules(
                text(rules, "season"),
                text(rules, "file"),
                LocalDate.parse(text(rules, "first")),
                LocalDate.parse(text(rules, "last")),
                rules.has("clock")
                        ? units.withClock(named(ClockFace.values(), ClockFace::symbol, text(rules, "clock")))
                        : units,
                rules.has("currency") ? Optional.of(text(rules, "currency")) : Optional.empty(),
                text(rules, "weather"),
                (int) number(rules, "recorded"),
                at(rules, "seed").asLong(),
                at(rules, "steps").asLong(),
                (int) number(rules, "forecastDays"),
                (int) number(rules, "replanDays"),
                rules.path("untreated").asBoolean(),
                rules.path("timesVary").asBoolean(),
                works(rules.path("works")));
    }

    private static DisplayUnits units(JsonNode units) {
        return new DisplayUnits(
                named(AreaUnit.values(), AreaUnit::symbol, text(units, "area")),
                named(VolumeUnit.values(), VolumeUnit::symbol, text(units, "volume")),
                named(MassUnit.values(), MassUnit::symbol, text(units, "mass")),
                named(DistanceUnit.values(), DistanceUnit::symbol, text(units, "distance")));
    }

    /** Those that are named, or planting. */
    private static Set<Work> works(JsonNode named) {
        Set<Work> works = EnumSet.noneOf(Work.class);
        named.forEach(work -> works.add(named(Work.values(), Work::key, work.asText())));
        return works.isEmpty() ? Set.of(Work.PLANT) : works;
    }

    private static ComparedVariant variant(JsonNode variant, List<Integer> numbers, LivingRules rules) {
        List<SpringFigures> springs = new ArrayList<>();
        for (JsonNode row : at(variant, "rows")) {
            if (springs.size() >= numbers.size() || (int) number(row, 0, rules) != numbers.get(springs.size())) {
                throw new IllegalArgumentException("has other springs for one variant than for another");
            }
            springs.add(spring(row, rules));
        }
        List<ComparedVariant.ResourceShare> limits = new ArrayList<>();
        at(variant, "limits")
                .properties()
                .forEach(limit -> limits.add(new ComparedVariant.ResourceShare(
                        named(Resource.values(), Resource::key, limit.getKey()),
                        number(limit.getValue(), "shareOfLate"),
                        number(limit.getValue(), "shareOfWait"))));
        Map<Measure, Double> luck = new EnumMap<>(Measure.class);
        JsonNode planLuck = at(variant, "planLuck");
        for (Measure measure : rules.measures()) {
            if (planLuck.has(ComparisonFile.key(measure))) {
                luck.put(measure, number(planLuck, ComparisonFile.key(measure)));
            }
        }
        OptionalDouble yearly =
                variant.has("yearlyCost") ? OptionalDouble.of(number(variant, "yearlyCost")) : OptionalDouble.empty();
        return new ComparedVariant(
                new LivedVariant(text(variant, "name"), yearly, luck, springs),
                text(variant, "sha256"),
                limits,
                foresight(variant),
                reserve(variant));
    }

    private static Optional<TriedReserve> reserve(JsonNode variant) {
        if (!variant.has("reserve")) {
            return Optional.empty();
        }
        JsonNode reserve = at(variant, "reserve");
        return Optional.of(new TriedReserve((int) number(reserve, "reserveS"), number(reserve, "compostKgPerHa")));
    }

    private static Optional<Foresight> foresight(JsonNode variant) {
        if (!variant.has("foresight")) {
            return Optional.empty();
        }
        JsonNode foresight = at(variant, "foresight");
        return Optional.of(new Foresight(
                (int) number(foresight, "springs"),
                number(foresight, "lateHaDays"),
                number(foresight, "unservedHa"),
                number(foresight, "livedLateHaDays"),
                number(foresight, "livedUnservedHa")));
    }

    private static SpringFigures spring(JsonNode row, LivingRules rules) {
        int columns = ComparisonFile.columns(rules).size();
        if (row.size() != columns) {
            throw new IllegalArgumentException("has a row of " + row.size() + " figures where " + columns + " belong");
        }
        return new SpringFigures(
                (int) number(row, 1, rules),
                number(row, 2, rules),
                number(row, 3, rules),
                (int) number(row, 4, rules),
                (int) number(row, 5, rules),
                number(row, 6, rules),
                number(row, 7, rules),
                number(row, 8, rules),
                number(row, 9, rules),
                number(row, 10, rules),
                number(row, 11, rules),
                rules.untreated() ? number(row, 13, rules) : 0,
                rules.untreated() ? number(row, 14, rules) : 1,
                rules.timesVary() ? (int) number(row, columns - 1, rules) : 0,
                row.get(12).isNull() ? OptionalDouble.empty() : OptionalDouble.of(number(row, 12, rules)));
    }

    private static <T> T named(T[] all, Function<T, String> name, String wanted) {
        return Arrays.stream(all)
                .filter(one -> name.apply(one).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("has an unknown '" + wanted + "'"));
    }

    private static String text(JsonNode node, String key) {
        JsonNode value = at(node, key);
        if (!value.isTextual()) {
            throw new IllegalArgumentException("has no text under '" + key + "'");
        }
        return value.textValue();
    }

    private static double number(JsonNode node, String key) {
        JsonNode value = at(node, key);
        if (!value.isNumber()) {
            throw new IllegalArgumentException("has no number under '" + key + "'");
        }
        return value.doubleValue();
    }

    private static double number(JsonNode row, int column, LivingRules rules) {
        JsonNode value = at(row, column);
        if (!value.isNumber()) {
            throw new IllegalArgumentException(
                    "has no number for " + ComparisonFile.columns(rules).get(column));
        }
        return value.doubleValue();
    }

    private static JsonNode at(JsonNode node, String key) {
        JsonNode value = node.get(key);
        if (value == null) {
            throw new IllegalArgumentException("has no '" + key + "'");
        }
        return value;
    }

    private static JsonNode at(JsonNode node, int index) {
        JsonNode value = node.get(index);
        if (value == null) {
            throw new IllegalArgumentException("has an empty list where something belongs");
        }
        return value;
    }
}
