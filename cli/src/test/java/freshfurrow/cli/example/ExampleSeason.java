package freshfurrow.cli.example;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Three fields, one planter and one rig in a week that begins on a Monday, in metric units. */
public final class ExampleSeason {
    public static final LocalDate MONDAY = LocalDate.of(2027, 4, 19);
    public static final LocalDate TUESDAY = MONDAY.plusDays(1);
    public static final LocalDate WEDNESDAY = MONDAY.plusDays(2);
    private static final LocalDate SUNDAY = MONDAY.plusDays(6);

    /** 4 m/s x 10 m x 0.5: 20 m2/s, which is 7.2 ha/h. */
    private static final Planter P1 = planter("P1");

    private ExampleSeason() {}

    /** N40 has the whole week; S80 has Monday and Tuesday; E20 has Wednesday and Thursday. */
    public static Season season() {
        return season(
                List.of(
                        field("N40", 8, "corn", MONDAY, SUNDAY),
                        field("S80", 4, "soybean", MONDAY, TUESDAY),
                        field("E20", 2, "soybean", WEDNESDAY, WEDNESDAY.plusDays(1))),
                List.of(P1),
                List.of(new CompostLot("windrow", 20, MONDAY.minusDays(30)), new CompostLot("bought", 6, WEDNESDAY)),
                OptionalDouble.of(3_500));
    }

    public static Season season(
            List<Field> fields, List<Planter> planters, List<CompostLot> compost, OptionalDouble payloadKg) {
        WorkHours hours = new WorkHours(List.of(new DaySpan(6 * 3600, 12 * 3600), new DaySpan(13 * 3600, 17 * 3600)));
        return new Season(
                "example",
                MONDAY,
                SUNDAY,
                ZoneId.of("UTC"),
                new ClosedDays(Set.of(DayOfWeek.SUNDAY), Set.of()),
                Map.of("yard", Optional.of(new GeoPoint(41, -97))),
                List.of(WithDefaults.recipe("standard", 200, 2, 5 * 3600)),
                fields,
                List.copyOf(planters),
                List.of(WithDefaults.rig(
                        "R1",
                        150,
                        16,
                        900,
                        180,
                        3_000,
                        2.5,
                        15,
                        payloadKg,
                        OptionalDouble.empty(),
                        ExtractAt.FIELD,
                        "yard",
                        hours)),
                List.of(WithDefaults.waterPoint(
                        "well", Optional.empty(), 2, 1, WorkHours.ALWAYS, OptionalDouble.empty(), 0)),
                compost,
                new Drying(2, 0.04, 0.08, 0.12),
                List.of(),
                Optional.empty(),
                (from, to) -> from.equals(to) ? 0 : 5_000,
                Goals.DEFAULT,
                DisplayUnits.METRIC,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    public static Field field(String id, double areaHa, String crop, LocalDate first, LocalDate last) {
        return field(id, areaHa, crop, first, last, Set.of());
    }

    public static Field field(
            String id, double areaHa, String crop, LocalDate first, LocalDate last, Set<String> planters) {
        return WithDefaults.field(
                id,
                id,
                areaHa,
                Optional.empty(),
                List.of(),
                crop,
                new DateWindow(first, last),
                "standard",
                Drainage.MODERATE,
                1,
                planters);
    }

    /** A planter of 20 m2/s that works 10 hours a day: 72 ha a day. */
    public static Planter planter(String id) {
        WorkHours hours = new WorkHours(List.of(new DaySpan(6 * 3600, 12 * 3600), new DaySpan(13 * 3600, 17 * 3600)));
        return WithDefaults.planter(id, 10, 0.75, 4, 0.5, 2_000, 7, 360, 720, "yard", hours);
    }
}
