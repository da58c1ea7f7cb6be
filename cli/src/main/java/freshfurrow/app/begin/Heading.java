package freshfurrow.app.begin;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a column of somebody's table may be about. */
public enum Heading {
    ID("id", "fieldid", "no", "nr", "number", "code", "fid", "objectid", "fieldno", "fieldnumber"),
    NAME("name", "field", "fieldname", "label", "paddock", "parcel", "block", "plot", "fldname"),
    AREA(
            "area",
            "size",
            "acres",
            "acre",
            "ac",
            "acreage",
            "hectares",
            "hectare",
            "ha",
            "fieldsize",
            "fieldarea",
            "areaac",
            "areaha"),
    LAT("lat", "latitude", "y", "latdd", "ycoord"),
    LON("lon", "lng", "long", "longitude", "x", "londd", "longdd", "xcoord"),
    CROP("crop", "cropname", "culture", "croptype", "plantedcrop", "cropplan"),
    DRAINAGE("drainage", "drains", "soildrainage");

    /** Never changed. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> names;

    Heading(String... names) {
        this.names = List.of(names);
    }

    /** As in the file of the fields. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What a heading with that text is about, whatever unit stands in it; empty when that cannot be told. */
    public static Optional<Heading> guess(String text) {
        String plain =
                text.replaceAll("[(\\[].*?[)\\]]", "").toLowerCase(Locale.ROOT).strip();
        return named(plain).or(() -> named(plain.replaceFirst("\\s(in )?(ac|acres|ha|hectares|m2)$", "")));
    }

    private static Optional<Heading> named(String plain) {
        String bare = plain.replaceAll("[^a-z0-9]", "");
        return Arrays.stream(values())
                .filter(heading -> heading.names.contains(bare))
                .findFirst();
    }

    /** The heading of that key; empty when there is none. */
    public static Optional<Heading> of(String key) {
        return Arrays.stream(values())
                .filter(heading -> heading.key().equals(key))
                .findAny();
    }

    /** The unit of areas that a heading names; empty when it names none. */
    static String areaUnit(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (lower.matches(".*\\b(acres?|ac|acreage)\\b.*")) {
            return "ac";
        }
        if (lower.matches(".*\\b(hectares?|ha)\\b.*")) {
            return "ha";
        }
        return lower.matches(".*\\b(m2|sqm)\\b.*") ? "m2" : "";
    }
}
