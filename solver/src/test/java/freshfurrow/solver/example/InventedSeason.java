package freshfurrow.solver.example;

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
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/**
 * An invented season of any size, the same for the same seed: fields strewn on a plain around one yard. Rates, drum and batch are the
 * usual ones: common practice, no source.
 */
public final class InventedSeason {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    private static final List<Drainage> DRAINAGE = List.of(Drainage.values());
    private static final WorkHours HOURS =
            new WorkHours(List.of(new DaySpan(7 * 3600, 12 * 3600), new DaySpan(12 * 3600 + 1800, 20 * 3600)));

    private InventedSeason() {}

    /** A season of small fields with windows of few days, one rig for all, in which some planting is bound to be late. */
    public static Season hurried(int fields, int planters, long seed) {
        Random random = new Random(seed);
        Season season = of(fields, planters, 1, 12_000, seed);
        return withFields(
                season,
                season.fields().stream()
                        .map(field -> field.change()
                                .areaHa(4 + random.nextInt(140) / 10.0)
                                .window(window(random))
                                .field())
                        .toList());
    }

    /** A season of fields of 10 to 22 ha, one or two fills each, with a hose for every second rig at each water point. */
    public static Season fortyAcreFields(int fields, int planters, int rigs, double extentM, long seed) {
        Random random = new Random(seed);
        Season season = withHoses(of(fields, planters, rigs, extentM, seed), Math.max(1, rigs / 2));
        return withFields(
                season,
                season.fields().stream()
                        .map(field -> field.change()
                                .areaHa(10 + random.nextInt(120) / 10.0)
                                .field())
                        .toList());
    }

    /** The same in which each crop has one window, and no water point a daily limit: rigs are what is short. */
    public static Season cropWindows(int fields, int planters, int rigs, double extentM, long seed) {
        Season season = fortyAcreFields(fields, planters, rigs, extentM, seed);
        DateWindow corn = new DateWindow(FIRST.plusDays(5), FIRST.plusDays(20));
        DateWindow beans = new DateWindow(FIRST.plusDays(18), FIRST.plusDays(34));
        return withFields(
                season,
                season.fields().stream()
                        .map(field -> field.change()
                                .window(field.lateWeight() == 1 ? corn : beans)
                                .field())
                        .toList());
    }

    private static Season withHoses(Season season, int hoses) {
        return season.change()
                .waterPoints(season.waterPoints().stream()
                        .map(point -> point.change()
                                .hoses(hoses)
                                .dailyLimitL(OptionalDouble.empty())
                                .waterPoint())
                        .toList())
                .season();
    }

    private static DateWindow window(Random random) {
        LocalDate opens = FIRST.plusDays(random.nextInt(3));
        return new DateWindow(opens, opens.plusDays(random.nextInt(3)));
    }

    /** A season on a small plain whose first field only the planter of that name may plant. */
    public static Season restrictedTo(String planter, int fields, int planters) {
        Season season = of(fields, planters, 1, 10_000, 1);
        Field first = season.fields().get(0);
        List<Field> list = new ArrayList<>(season.fields());
        list.set(0, first.change().planters(Set.of(planter)).field());
        return withFields(season, list);
    }

    /** The season with other fields. */
    public static Season withFields(Season season, List<Field> fields) {
        return season.change().fields(fields).season();
    }

    /** The season with other compost. */
    public static Season withCompost(Season season, List<CompostLot> compost) {
        return season.change().compost(compost).season();
    }

    /** The season with other rain. */
    public static Season withRain(Season season, List<Rain> rain) {
        return season.change().rain(rain).season();
    }

    /**
     * A season of so many fields, planters and rigs.
     *
     * @param extentM side of the square that the fields lie in, m
     */
    public static Season of(int fields, int planters, int rigs, double extentM, long seed) {
        Random random = new Random(seed);
        Map<String, double[]> at = new HashMap<>();
        at.put("yard", new double[] {extentM / 2, extentM / 2});
        at.put("well", new double[] {extentM * 0.4, extentM * 0.6});
        at.put("pond", new double[] {extentM * 0.8, extentM * 0.3});
        List<Field> list = new ArrayList<>();
        double totalHa = 0;
        for (int i = 0; i < fields; i++) {
            String id = "F" + i;
            at.put(id, new double[] {random.nextDouble() * extentM, random.nextDouble() * extentM});
            boolean corn = random.nextInt(100) < 60;
            int opens = (corn ? 1 : 10) + random.nextInt(6);
            int closes = opens + 9 + random.nextInt(14);
            double areaHa = 8 + random.nextInt(500) / 10.0;
            totalHa += areaHa;
            list.add(WithDefaults.field(
                    id,
                    id,
                    areaHa,
                    Optional.empty(),
                    List.of(),
                    corn ? "corn" : "soybean",
                    new DateWindow(FIRST.plusDays(opens), FIRST.plusDays(closes)),
                    random.nextInt(100) < 80 ? "standard" : "strong",
                    DRAINAGE.get(random.nextInt(DRAINAGE.size())),
                    corn ? 1 : 0.6,
                    random.nextInt(100) < 10 ? Set.of("P" + random.nextInt(planters)) : Set.of()));
        }
        List<Planter> planterList = new ArrayList<>();
        for (int i = 0; i < planters; i++) {
            planterList.add(WithDefaults.planter(
                    "P" + i, i % 2 == 0 ? 12.2 : 9.1, 0.76, 2.2, 0.65, 2271, 6.7, 360, 720, "yard", HOURS));
        }
        List<Rig> rigList = new ArrayList<>();
        for (int i = 0; i < rigs; i++) {
            rigList.add(WithDefaults.rig(
                    "R" + i,
                    151,
                    13.6,
                    600,
                    180,
                    4542,
                    3.8,
                    15.6,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    ExtractAt.FIELD,
                    "yard",
                    new WorkHours(List.of(new DaySpan(6 * 3600, 21 * 3600)))));
        }
        return new Season(
                "invented " + seed,
                FIRST,
                FIRST.plusDays(47),
                ZoneId.of("America/Chicago"),
                new ClosedDays(Set.of(DayOfWeek.SUNDAY), Set.of()),
                Map.of("yard", Optional.of(new GeoPoint(41, -97))),
                List.of(
                        WithDefaults.recipe("standard", 187, 2.24, 5 * 3600),
                        WithDefaults.recipe("strong", 187, 3.4, 4 * 3600)),
                list,
                List.copyOf(planterList),
                rigList,
                List.of(
                        WithDefaults.waterPoint(
                                "well", Optional.empty(), 2.5, 1, WorkHours.ALWAYS, OptionalDouble.empty(), 0),
                        WithDefaults.waterPoint(
                                "pond", Optional.empty(), 5, 1, WorkHours.ALWAYS, OptionalDouble.of(30_000), 0)),
                List.of(
                        new CompostLot("windrow", totalHa * 1.6, FIRST.minusDays(10)),
                        new CompostLot("bought", totalHa * 1.6, FIRST.plusDays(14))),
                new Drying(2.5, 0.04, 0.08, 0.12),
                List.of(new Rain(FIRST.plusDays(8), 14 * 3600, 20), new Rain(FIRST.plusDays(20), 4 * 3600, 12)),
                Optional.empty(),
                (from, to) -> {
                    double[] a = at.get(from);
                    double[] b = at.get(to);
                    return 1.3 * Math.hypot(a[0] - b[0], a[1] - b[1]);
                },
                Goals.DEFAULT,
                DisplayUnits.US,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }
}
