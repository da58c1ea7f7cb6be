package freshfurrow.model.example;

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
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Seasons out of a seed, small enough to try all lists and tight enough for the order to matter: 8 fields, 2 planters, 1 or 2
 * rigs, a water point, short days, windows that close one after the other, a rain. About a load a field.
 */
public final class SmallSeasons {
    public static final int FIELDS = 8;

    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    private static final int DAYS = 6;

    private final Random random;
    private final Map<String, double[]> points = new LinkedHashMap<>();

    private SmallSeasons(long seed) {
        random = new Random(seed);
    }

    /** The season of that seed. */
    public static Season season(long seed) {
        return new SmallSeasons(seed).season();
    }

    private Season season() {
        WorkHours morning = new WorkHours(List.of(new DaySpan(8 * 3600, 12 * 3600)));
        WorkHours day = new WorkHours(List.of(new DaySpan(6 * 3600, 20 * 3600)));
        List<Planter> planters = IntStream.rangeClosed(1, 2)
                .mapToObj(i -> WithDefaults.planter(
                        "P" + i, between(8, 12), 0.75, 2, 0.5, between(800, 1500), 5, 300, 600, place("yard"), morning))
                .toList();
        List<Rig> rigs = IntStream.rangeClosed(1, between(1, 2))
                .mapToObj(i -> WithDefaults.rig(
                        "R" + i,
                        150,
                        50,
                        900,
                        180,
                        2500,
                        2,
                        10,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        random.nextInt(3) == 0 ? ExtractAt.WATER : ExtractAt.FIELD,
                        "yard",
                        day))
                .toList();
        List<Recipe> recipes = List.of(
                WithDefaults.recipe("standard", 200, 10, 5 * 3600), WithDefaults.recipe("strong", 250, 20, 4 * 3600));
        List<Field> fields =
                IntStream.rangeClosed(1, FIELDS).mapToObj(this::field).toList();
        return new Season(
                "Small",
                FIRST,
                FIRST.plusDays(DAYS - 1L),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(), Set.of()),
                Map.of("yard", Optional.of(new GeoPoint(0, 0))),
                recipes,
                fields,
                List.copyOf(planters),
                rigs,
                List.of(WithDefaults.waterPoint(
                        place("well"),
                        Optional.empty(),
                        4,
                        1,
                        WorkHours.ALWAYS,
                        OptionalDouble.of(between(4000, 9000)),
                        0)),
                List.of(
                        new CompostLot("heap", 250, FIRST),
                        new CompostLot("delivery", 1000, FIRST.plusDays(between(1, 3)))),
                new Drying(2, 0.02, 0.05, 0.1),
                List.of(new Rain(FIRST.plusDays(between(0, 3)), between(6, 11) * 3600, between(5, 25))),
                Optional.empty(),
                this::metres,
                Goals.DEFAULT,
                DisplayUnits.METRIC,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private Field field(int number) {
        LocalDate opens = FIRST.plusDays(random.nextInt(4) == 0 ? 1 : 0);
        return WithDefaults.field(
                place("F" + number),
                "Field " + number,
                1.5 + 3 * random.nextDouble(),
                Optional.empty(),
                List.of(),
                "corn",
                new DateWindow(opens, opens.plusDays(between(0, 2))),
                random.nextInt(4) == 0 ? "strong" : "standard",
                random.nextBoolean() ? Drainage.MODERATE : Drainage.POOR,
                1 + random.nextInt(2),
                random.nextInt(3) == 0 ? Set.of("P" + between(1, 2)) : Set.of());
    }

    private String place(String id) {
        points.computeIfAbsent(id, any -> new double[] {random.nextDouble() * 8000, random.nextDouble() * 8000});
        return id;
    }

    private double metres(String from, String to) {
        double[] a = points.get(from);
        double[] b = points.get(to);
        if (a == null || b == null) {
            throw new IllegalArgumentException("no road from " + from + " to " + to);
        }
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }
}
