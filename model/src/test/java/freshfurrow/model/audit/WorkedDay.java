package freshfurrow.model.audit;

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
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;

/**
 * One day of two fields, worked by hand: a planter P1, a rig R1, a well. Plans of it are plan files as text, so that tests
 * can break them the way a file is broken.
 *
 * <p>P1: 10 m x 2 m/s x 0.5 = 10 m2/s, so 10 ha take 10,000 s and 6 ha 6,000 s. Its tank of 2,000 L at 200 L/ha holds
 * 10 ha. It waits in the yard; field A (10 ha) is 3 km away, at 5 m/s 600 s and 600 s to unfold; from A to B (6 ha) 1.5
 * km, 300 s + 600 s. R1: 15 kg in 150 L and 900 s a batch, 180 s to clean, 4,000 L of water, 4 L/s, 10 m/s.
 */
final class WorkedDay {
    static final LocalDate FIRST = LocalDate.of(2027, 4, 19);

    private static final double BUCKET_KG = 30 * 0.45359237;
    private static final WorkHours PLANTER_HOURS =
            new WorkHours(List.of(new DaySpan(7 * 3600, 12 * 3600), new DaySpan(12 * 3600 + 1800, 20 * 3600)));
    private static final WorkHours RIG_HOURS = new WorkHours(List.of(new DaySpan(6 * 3600, 20 * 3600)));
    private static final WorkHours WELL_HOURS = new WorkHours(List.of(new DaySpan(5 * 3600, 21 * 3600)));
    private static final Map<Set<String>, Double> ROADS = Map.of(
            Set.of("yard", "well"), 2000.0,
            Set.of("yard", "A"), 3000.0,
            Set.of("yard", "B"), 4000.0,
            Set.of("well", "A"), 3000.0,
            Set.of("well", "B"), 2000.0,
            Set.of("A", "B"), 1500.0);

    private WorkedDay() {}

    /** What tests vary of the season; as it stands here, it is the season of {@link #PLAN_AT_THE_FIELD}. */
    static final class Setup {
        ExtractAt extractAt = ExtractAt.FIELD;
        int holdS = 4 * 3600;
        int reserveS = 45 * 60;
        LocalDate first = FIRST;
        LocalDate opensA = LocalDate.of(2027, 4, 20);
        LocalDate opensB = FIRST;
        LocalDate closed = LocalDate.of(2027, 4, 22);
        String planterOfB = "P1";
        double rainOnThe19thMm = 20;
        double rainOnThe20thMm = 4.9;
        int hookUpS;
        WorkHours rigHours = RIG_HOURS;
        int setUpS;
        int closeUpS;
        int flushS;
    }

    /** The season of {@link #PLAN_AT_THE_WATER}: batches at the well and a mix that holds for 7 h. */
    static Season atTheWater() {
        return season(day -> {
            day.extractAt = ExtractAt.WATER;
            day.holdS = 7 * 3600;
        });
    }

    static Season season(Consumer<Setup> change) {
        Setup day = new Setup();
        change.accept(day);
        return new Season(
                "Worked day",
                day.first,
                LocalDate.of(2027, 5, 1),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(DayOfWeek.SUNDAY), Set.of(day.closed)),
                Map.of("yard", Optional.of(new GeoPoint(0, 0))),
                List.of(
                        new Recipe("standard", 200, 2, day.holdS, OptionalInt.of(day.reserveS)),
                        new Recipe("strong", 200, 4, day.holdS, OptionalInt.of(day.reserveS))),
                List.of(
                        field("A", 10, day.opensA, LocalDate.of(2027, 4, 30), 1, Drainage.MODERATE, "P1"),
                        field("B", 6, day.opensB, day.opensB, 2, Drainage.WELL, day.planterOfB)),
                List.of(WithDefaults.planter("P1", 10, 0.75, 2, 0.5, 2000, 5, 300, 600, "yard", PLANTER_HOURS)
                        .change()
                        .flushS(day.flushS)
                        .planter()),
                List.of(WithDefaults.rig(
                                "R1",
                                150,
                                15,
                                900,
                                180,
                                4000,
                                4,
                                10,
                                OptionalDouble.empty(),
                                OptionalDouble.of(BUCKET_KG),
                                day.extractAt,
                                "yard",
                                day.rigHours)
                        .change()
                        .setUpS(day.setUpS)
                        .closeUpS(day.closeUpS)
                        .rig()),
                List.of(WithDefaults.waterPoint("well", Optional.empty(), 4, 1, WELL_HOURS, OptionalDouble.of(5000), 60)
                        .change()
                        .hookUpS(day.hookUpS)
                        .waterPoint()),
                List.of(
                        new CompostLot("windrow", 40, LocalDate.of(2027, 4, 1)),
                        new CompostLot("delivery", 40, LocalDate.of(2027, 4, 25))),
                new Drying(5, 0, 0.05, 0.1),
                List.of(
                        new Rain(FIRST, 8 * 3600, day.rainOnThe19thMm),
                        new Rain(LocalDate.of(2027, 4, 20), 0, day.rainOnThe20thMm)),
                Optional.empty(),
                WorkedDay::metres,
                new Goals(
                        30,
                        20,
                        20,
                        1,
                        0.5,
                        10,
                        0.05,
                        Goals.DEFAULT.movedMin(),
                        0,
                        1,
                        0,
                        0,
                        1,
                        Goals.DEFAULT.steadyDays(),
                        OptionalDouble.empty()),
                DisplayUnits.METRIC,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static double metres(String from, String to) {
        if (from.equals(to)) {
            return 0;
        }
        Double metres = ROADS.get(Set.of(from, to));
        if (metres == null) {
            throw new IllegalArgumentException("no road from " + from + " to " + to);
        }
        return metres;
    }

    private static Field field(
            String id,
            double areaHa,
            LocalDate opens,
            LocalDate closes,
            double lateWeight,
            Drainage drainage,
            String planter) {
        return WithDefaults.field(
                id,
                id,
                areaHa,
                Optional.empty(),
                List.of(),
                "corn",
                new DateWindow(opens, closes),
                "standard",
                drainage,
                lateWeight,
                Set.of(planter));
    }

    /** What might stand in the plan below if no plan had less of anything. */
    static final String BOUNDS = """
             "bounds": {"planterFills": 2, "waterTrips": 1, "unservedHa": 0, "lateHaDays": 6, "medium": -1200, "provedBest": true},
             "limits": [
              {"resource": "planter", "unservedHa": 0, "lateHaDays": 3, "waitMin": 1, "shareOfLate": 0.5, "shareOfWait": 0.5},
              {"resource": "rig", "unservedHa": 0, "lateHaDays": 6, "waitMin": 2, "shareOfLate": 0, "shareOfWait": 0},
              {"resource": "hose", "unservedHa": 0, "lateHaDays": 6, "waitMin": 2, "shareOfLate": 0, "shareOfWait": 0},
              {"resource": "waterLimit", "unservedHa": 0, "lateHaDays": 6, "waitMin": 2, "shareOfLate": 0, "shareOfWait": 0},
              {"resource": "compost", "unservedHa": 0, "lateHaDays": 6, "waitMin": 2, "shareOfLate": 0, "shareOfWait": 0},
              {"resource": "weather", "unservedHa": 0, "lateHaDays": 6, "waitMin": 2, "shareOfLate": 0, "shareOfWait": 0},
              {"resource": "windows", "unservedHa": 0, "lateHaDays": 6, "waitMin": 2, "shareOfLate": 0, "shareOfWait": 0}]
            """;

    /**
     * Load 1 is 2,000 L with 20 kg: two batches of 10 kg, 600 s each, transfer 300 + 500 s. Load 2 is 1,200 L with 12
     * kg: 720 s, transfer 300 + 300 s, asked for at 10:20 and ready at 10:22. The draw of 4,000 L takes 60 + 1,000 s. B is
     * planted for 4,380 s before lunch and 1,620 s after. Freshness margins are 47 and 85 min. B is a day late: 6 ha-days
     * with a weight of 2; medium -1,200. Soft: 2 x 30 + 20 + 2 + 0.5 x (500 + 900) / 60 + 0.05 x 16 = 94.5.
     */
    static final String PLAN_AT_THE_FIELD = """
            {"format": "freshfurrow-plan/1",
             "season": {"name": "Worked day", "file": "season.yaml", "sha256": "00", "units": {"area": "ha", "volume": "L", "mass": "kg", "distance": "km"}},
             "score": {"hard": 0, "medium": -1200, "soft": -94},
             "totals": {"areaHa": 16, "unservedHa": 0, "lateHaDays": 6, "planterFills": 2, "waterTrips": 1, "batches": 3, "compostKg": 32, "dumpedL": 0, "waitMin": 2, "driveKm": 9.5, "smallestMarginMin": 47, "finish": "2027-04-20T12:57:00"},
             "planters": {"P1": {"tankL": 2000, "fields": ["A", "B"], "activities": [
              {"kind": "move", "start": "2027-04-20T07:00:00", "end": "2027-04-20T07:20:00", "from": "yard", "to": "A", "km": 3},
              {"kind": "fill", "start": "2027-04-20T07:20:00", "end": "2027-04-20T07:33:20", "at": "A", "load": "L1"},
              {"kind": "plant", "start": "2027-04-20T07:33:20", "end": "2027-04-20T10:20:00", "field": "A", "load": "L1", "areaHa": 10},
              {"kind": "wait", "start": "2027-04-20T10:20:00", "end": "2027-04-20T10:22:00", "at": "A", "why": "rig"},
              {"kind": "fill", "start": "2027-04-20T10:22:00", "end": "2027-04-20T10:32:00", "at": "A", "load": "L2"},
              {"kind": "move", "start": "2027-04-20T10:32:00", "end": "2027-04-20T10:47:00", "from": "A", "to": "B", "km": 1.5},
              {"kind": "plant", "start": "2027-04-20T10:47:00", "end": "2027-04-20T12:00:00", "field": "B", "load": "L2", "areaHa": 4.38},
              {"kind": "plant", "start": "2027-04-20T12:30:00", "end": "2027-04-20T12:57:00", "field": "B", "load": "L2", "areaHa": 1.62}]}},
             "rigs": {"R1": {"activities": [
              {"kind": "move", "start": "2027-04-20T06:00:00", "end": "2027-04-20T06:03:20", "from": "yard", "to": "well", "km": 2},
              {"kind": "draw", "start": "2027-04-20T06:03:20", "end": "2027-04-20T06:21:00", "at": "well", "litres": 4000},
              {"kind": "move", "start": "2027-04-20T06:21:00", "end": "2027-04-20T06:26:00", "from": "well", "to": "A", "km": 3},
              {"kind": "extract", "start": "2027-04-20T06:57:00", "end": "2027-04-20T07:07:00", "at": "A", "batch": "B1"},
              {"kind": "clean", "start": "2027-04-20T07:07:00", "end": "2027-04-20T07:10:00", "at": "A"},
              {"kind": "extract", "start": "2027-04-20T07:10:00", "end": "2027-04-20T07:20:00", "at": "A", "batch": "B2"},
              {"kind": "transfer", "start": "2027-04-20T07:20:00", "end": "2027-04-20T07:33:20", "at": "A", "load": "L1", "litres": 2000},
              {"kind": "clean", "start": "2027-04-20T07:33:20", "end": "2027-04-20T07:36:20", "at": "A"},
              {"kind": "extract", "start": "2027-04-20T10:10:00", "end": "2027-04-20T10:22:00", "at": "A", "batch": "B3"},
              {"kind": "transfer", "start": "2027-04-20T10:22:00", "end": "2027-04-20T10:32:00", "at": "A", "load": "L2", "litres": 1200},
              {"kind": "clean", "start": "2027-04-20T10:32:00", "end": "2027-04-20T10:35:00", "at": "A"}]}},
             "loads": [
              {"id": "L1", "planter": "P1", "rig": "R1", "recipe": "standard", "litres": 2000, "batches": ["B1", "B2"], "appliedL": 2000, "dumpedL": 0, "deadline": "2027-04-20T11:07:00", "lastDrop": "2027-04-20T10:20:00"},
              {"id": "L2", "planter": "P1", "rig": "R1", "recipe": "standard", "litres": 1200, "batches": ["B3"], "appliedL": 1200, "dumpedL": 0, "deadline": "2027-04-20T14:22:00", "lastDrop": "2027-04-20T12:57:00"}],
             "batches": [
              {"id": "B1", "rig": "R1", "start": "2027-04-20T06:57:00", "end": "2027-04-20T07:07:00", "compostKg": 10, "waterL": 100, "lots": {"windrow": 10}},
              {"id": "B2", "rig": "R1", "start": "2027-04-20T07:10:00", "end": "2027-04-20T07:20:00", "compostKg": 10, "waterL": 100, "lots": {"windrow": 10}},
              {"id": "B3", "rig": "R1", "start": "2027-04-20T10:10:00", "end": "2027-04-20T10:22:00", "compostKg": 12, "waterL": 120, "lots": {"windrow": 12}}],
             "unserved": []}
            """;

    /**
     * One trip serves both loads: 3,400 L of mix drawn in 60 + 850 s and made of 34 kg in three batches of 680 s;
     * 200 L of it are left and let out. All is oldest since 06:46:20 and holds until 13:46:20: margins 206 and 51
     * min. B is planted for 4,500 s before lunch and 1,500 s after. Soft: 2 x 30 + 20 + 0.5 x (500 + 900) / 60 + 10 x 2 +
     * 0.05 x 16 = 112.5.
     */
    static final String PLAN_AT_THE_WATER = """
            {"format": "freshfurrow-plan/1",
             "season": {"name": "Worked day", "file": "season.yaml", "sha256": "00", "units": {"area": "ha", "volume": "L", "mass": "kg", "distance": "km"}},
             "score": {"hard": 0, "medium": -1200, "soft": -112},
             "totals": {"areaHa": 16, "unservedHa": 0, "lateHaDays": 6, "planterFills": 2, "waterTrips": 1, "batches": 3, "compostKg": 34, "dumpedL": 200, "waitMin": 0, "driveKm": 9.5, "smallestMarginMin": 51.333, "finish": "2027-04-20T12:55:00"},
             "planters": {"P1": {"tankL": 2000, "fields": ["A", "B"], "activities": [
              {"kind": "move", "start": "2027-04-20T07:00:00", "end": "2027-04-20T07:20:00", "from": "yard", "to": "A", "km": 3},
              {"kind": "fill", "start": "2027-04-20T07:20:00", "end": "2027-04-20T07:33:20", "at": "A", "load": "L1"},
              {"kind": "plant", "start": "2027-04-20T07:33:20", "end": "2027-04-20T10:20:00", "field": "A", "load": "L1", "areaHa": 10},
              {"kind": "fill", "start": "2027-04-20T10:20:00", "end": "2027-04-20T10:30:00", "at": "A", "load": "L2"},
              {"kind": "move", "start": "2027-04-20T10:30:00", "end": "2027-04-20T10:45:00", "from": "A", "to": "B", "km": 1.5},
              {"kind": "plant", "start": "2027-04-20T10:45:00", "end": "2027-04-20T12:00:00", "field": "B", "load": "L2", "areaHa": 4.5},
              {"kind": "plant", "start": "2027-04-20T12:30:00", "end": "2027-04-20T12:55:00", "field": "B", "load": "L2", "areaHa": 1.5}]}},
             "rigs": {"R1": {"activities": [
              {"kind": "move", "start": "2027-04-20T06:00:00", "end": "2027-04-20T06:03:20", "from": "yard", "to": "well", "km": 2},
              {"kind": "draw", "start": "2027-04-20T06:03:20", "end": "2027-04-20T06:18:30", "at": "well", "litres": 3400},
              {"kind": "extract", "start": "2027-04-20T06:35:00", "end": "2027-04-20T06:46:20", "at": "well", "batch": "B1"},
              {"kind": "clean", "start": "2027-04-20T06:46:20", "end": "2027-04-20T06:49:20", "at": "well"},
              {"kind": "extract", "start": "2027-04-20T06:49:20", "end": "2027-04-20T07:00:40", "at": "well", "batch": "B2"},
              {"kind": "clean", "start": "2027-04-20T07:00:40", "end": "2027-04-20T07:03:40", "at": "well"},
              {"kind": "extract", "start": "2027-04-20T07:03:40", "end": "2027-04-20T07:15:00", "at": "well", "batch": "B3"},
              {"kind": "move", "start": "2027-04-20T07:15:00", "end": "2027-04-20T07:20:00", "from": "well", "to": "A", "km": 3},
              {"kind": "transfer", "start": "2027-04-20T07:20:00", "end": "2027-04-20T07:33:20", "at": "A", "load": "L1", "litres": 2000},
              {"kind": "clean", "start": "2027-04-20T07:33:20", "end": "2027-04-20T07:36:20", "at": "A"},
              {"kind": "transfer", "start": "2027-04-20T10:20:00", "end": "2027-04-20T10:30:00", "at": "A", "load": "L2", "litres": 1200},
              {"kind": "dump", "start": "2027-04-20T14:00:00", "end": "2027-04-20T14:00:00", "at": "A", "litres": 200}]}},
             "loads": [
              {"id": "L1", "planter": "P1", "rig": "R1", "recipe": "standard", "litres": 2000, "batches": ["B1", "B2", "B3"], "appliedL": 2000, "dumpedL": 0, "deadline": "2027-04-20T13:46:20", "lastDrop": "2027-04-20T10:20:00"},
              {"id": "L2", "planter": "P1", "rig": "R1", "recipe": "standard", "litres": 1200, "batches": ["B1", "B2", "B3"], "appliedL": 1200, "dumpedL": 0, "deadline": "2027-04-20T13:46:20", "lastDrop": "2027-04-20T12:55:00"}],
             "batches": [
              {"id": "B1", "rig": "R1", "start": "2027-04-20T06:35:00", "end": "2027-04-20T06:46:20", "compostKg": 11.333, "waterL": 113.33, "lots": {"windrow": 11.333}},
              {"id": "B2", "rig": "R1", "start": "2027-04-20T06:49:20", "end": "2027-04-20T07:00:40", "compostKg": 11.334, "waterL": 113.34, "lots": {"windrow": 11.334}},
              {"id": "B3", "rig": "R1", "start": "2027-04-20T07:03:40", "end": "2027-04-20T07:15:00", "compostKg": 11.333, "waterL": 113.33, "lots": {"windrow": 11.333}}],
             "unserved": []}
            """;
}
