package freshfurrow.app.shapefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A coordinate system of a .prj file as parameters of proj, which Proj4J computes with. */
final class ProjectionText {
    private static final Map<String, String> PROJECTIONS = Map.of(
            "transverse_mercator", "tmerc",
            "gauss_kruger", "tmerc",
            "lambert_conformal_conic", "lcc",
            "lambert_conformal_conic_2sp", "lcc",
            "lambert_conformal_conic_1sp", "lcc",
            "mercator_auxiliary_sphere", "merc",
            "albers", "aea",
            "albers_conic_equal_area", "aea");

    /** Within a metre or two of WGS84. */
    private static final List<String> AS_WGS84 = List.of(
            "wgs_1984",
            "wgs_84",
            "wgs84",
            "north_american_1983",
            "nad83",
            "etrs_1989",
            "etrs89",
            "gda_1994",
            "gda_2020",
            "gda2020",
            "rgf_1993",
            "nzgd_2000");

    private static final List<String> NAD27 = List.of("north_american_1927", "nad27", "north_american_datum_1927");

    private final Wkt wkt;

    ProjectionText(Wkt wkt) {
        this.wkt = wkt;
    }

    boolean isInDegrees() {
        return wkt.keyword().equals("GEOGCS");
    }

    /** The projection's name where it is none of those that are known. */
    Optional<String> unknownProjection() {
        String name = projection();
        return isInDegrees() || PROJECTIONS.containsKey(name) ? Optional.empty() : Optional.of(name);
    }

    /** @throws IllegalArgumentException when something is missing in it */
    String parameters() {
        Wkt spheroid = wkt.find("SPHEROID").orElseThrow(() -> new IllegalArgumentException("no SPHEROID"));
        double axis = spheroid.figure(1);
        double flattening = spheroid.figure(2); // inverse; 0 for a sphere
        List<String> all = new ArrayList<>();
        String earth = "+a=" + axis + " +b=" + (flattening == 0 ? axis : axis * (1 - 1 / flattening));
        if (isInDegrees()) {
            all.add("+proj=longlat " + earth);
        } else if (projection().equals("mercator_auxiliary_sphere")) {
            all.add("+proj=merc +a=" + axis + " +b=" + axis);
        } else {
            all.add("+proj=" + PROJECTIONS.get(projection()) + " " + earth);
        }
        if (!isInDegrees()) {
            origin(all);
        }
        all.add(shift());
        return String.join(" ", all) + " +no_defs";
    }

    private void origin(List<String> all) {
        double metres = metresPerUnit();
        put(all, "lon_0", first("central_meridian", "longitude_of_center", "longitude_of_origin"));
        put(all, "lat_0", first("latitude_of_origin", "latitude_of_center"));
        OptionalDouble parallel = wkt.parameter("standard_parallel_1");
        boolean conic = projection().startsWith("lambert") || projection().startsWith("albers");
        put(all, "lat_1", parallel.isEmpty() && conic ? first("latitude_of_origin", "latitude_of_center") : parallel);
        put(all, "lat_2", wkt.parameter("standard_parallel_2"));
        put(all, "k_0", wkt.parameter("scale_factor"));
        wkt.parameter("false_easting").ifPresent(east -> all.add("+x_0=" + east * metres));
        wkt.parameter("false_northing").ifPresent(north -> all.add("+y_0=" + north * metres));
        all.add("+to_meter=" + metres);
    }

    private OptionalDouble first(String... names) {
        for (String name : names) {
            if (wkt.parameter(name).isPresent()) {
                return wkt.parameter(name);
            }
        }
        return OptionalDouble.empty();
    }

    private static void put(List<String> all, String key, OptionalDouble figure) {
        figure.ifPresent(value -> all.add("+" + key + "=" + value));
    }

    /** What moves the datum to WGS84, where it is moved; that of 1927 by the mean of the conterminous states (NIMA TR8350.2, from memory). */
    private String shift() {
        return NAD27.contains(datum()) ? "+towgs84=-8,160,176" : "";
    }

    /** The unit of its coordinates, and whether places may be off. */
    String said(String file) {
        String name = wkt.name().isEmpty() ? "a system without a name" : wkt.name();
        String unit = isInDegrees() ? "degrees" : unit();
        String datum = AS_WGS84.contains(datum())
                ? ""
                : NAD27.contains(datum())
                        ? " Its datum of 1927 is moved by a mean, so that places may be off by 10 m or more."
                        : " Its datum is taken as if it were WGS84, so that places may be off by 100 m or more.";
        return "By " + file + ", its coordinates are of " + name + ", in " + unit + "." + datum;
    }

    private String unit() {
        Wkt unit = wkt.inside("UNIT").orElseThrow(() -> new IllegalArgumentException("no UNIT"));
        String name = unit.name().toLowerCase(Locale.ROOT);
        return switch (name) {
            case "meter", "metre" -> "metres";
            case "foot_us", "us survey foot" -> "US survey feet";
            case "foot", "international foot" -> "feet";
            default -> unit.name() + " of " + unit.figure(1) + " m";
        };
    }

    private double metresPerUnit() {
        return wkt.inside("UNIT")
                .orElseThrow(() -> new IllegalArgumentException("no UNIT"))
                .figure(1);
    }

    private String projection() {
        return wkt.inside("PROJECTION").map(Wkt::name).orElse("").toLowerCase(Locale.ROOT);
    }

    private String datum() {
        String name = wkt.find("DATUM").map(Wkt::name).orElse("").toLowerCase(Locale.ROOT);
        return name.replaceFirst("^d_", "").replaceFirst("_\\(?(csrs|hpgn|harn|2011|nsrs2007)\\)?$", "");
    }
}
