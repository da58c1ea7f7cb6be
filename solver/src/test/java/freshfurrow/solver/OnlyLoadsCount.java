package freshfurrow.solver;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Invented seasons in which nothing matters but the number of loads: all places are one, machines work day and night, a load
 * keeps for two days, and there is a rig for each planter. Each field is closed to one of the planters.
 */
final class OnlyLoadsCount {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 1);
    private static final double MIX_L_PER_HA = 100;

    private OnlyLoadsCount() {}

    /** @param tankHa what each planter's tank serves, ha */
    static Season season(int fields, int[] tankHa, long seed) {
        Random random = new Random(seed);
        List<String> planterIds = IntStream.range(0, tankHa.length)
                .mapToObj(planter -> "P" + planter)
                .toList();
        return new Season(
                "only loads count",
                FIRST,
                FIRST.plusDays(29),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(), Set.of()),
                Map.of("yard", Optional.of(new GeoPoint(0, 0))),
                List.of(WithDefaults.recipe("standard", MIX_L_PER_HA, 2, 48 * 3600)),
                IntStream.range(0, fields)
                        .mapToObj(field -> field("F" + field, planterIds, random))
                        .toList(),
                IntStream.range(0, tankHa.length)
                        .<Applicator>mapToObj(planter -> planter(planterIds.get(planter), tankHa[planter]))
                        .toList(),
                IntStream.range(0, tankHa.length)
                        .mapToObj(planter -> rig("R" + planter))
                        .toList(),
                List.of(WithDefaults.waterPoint(
                        "well", Optional.empty(), 100, 9, WorkHours.ALWAYS, OptionalDouble.empty(), 0)),
                List.of(new CompostLot("windrow", 1e6, FIRST)),
                new Drying(0, 0, 0, 0),
                List.of(),
                Optional.empty(),
                (from, to) -> 0,
                new Goals(
                        30,
                        0,
                        0,
                        0,
                        0,
                        0,
                        0,
                        Goals.DEFAULT.movedMin(),
                        0,
                        1,
                        0,
                        0,
                        0,
                        Goals.DEFAULT.steadyDays(),
                        OptionalDouble.empty()),
                DisplayUnits.METRIC,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static Field field(String id, List<String> planterIds, Random random) {
        String closedTo = planterIds.get(random.nextInt(planterIds.size()));
        return WithDefaults.field(
                id,
                id,
                (20 + random.nextInt(60)) / 10.0,
                Optional.empty(),
                List.of(),
                "corn",
                new DateWindow(FIRST, FIRST.plusDays(29)),
                "standard",
                Drainage.WELL,
                1,
                Set.copyOf(planterIds.stream()
                        .filter(planter -> !planter.equals(closedTo))
                        .toList()));
    }

    private static Planter planter(String id, int tankHa) {
        return WithDefaults.planter(id, 12, 0.75, 2, 0.65, tankHa * MIX_L_PER_HA, 5, 0, 0, "yard", WorkHours.ALWAYS);
    }

    private static Rig rig(String id) {
        return WithDefaults.rig(
                id,
                150,
                15,
                600,
                0,
                5_000,
                5,
                10,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                ExtractAt.FIELD,
                "yard",
                WorkHours.ALWAYS);
    }
}
