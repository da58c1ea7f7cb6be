package freshfurrow.solver.bounds;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Applicator;
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
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Seasons in which a planter plants just two fields a day. All places are one. A field has 2 ha, which takes 2,000 s at 10 m2/s.
 * Its mix is 200 L; a tank holds 400 L, and a transfer of that takes 60 s + 400 L / 4 L/s = 160 s. A day has 160 s + 2 x 2,000 s =
 * 4,160 s from 08:00 on. A load keeps for 2 h, so none lasts overnight. There is a rig for each planter, day and night, with a nurse
 * tank of 800 L, and plenty of water and compost.
 */
final class TwoFieldsADay {
    static final double FIELD_HA = 2;

    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    private static final int START_S = 8 * 3600;
    private static final int DAY_WORK_S = 4_160;

    private final int planters;
    private double fieldHa = FIELD_HA;
    private int dayWorkS = DAY_WORK_S;
    private double nurseTankL = 800;
    private int moveTimeS;
    private double metresToWater;
    private WaterPoint well =
            WithDefaults.waterPoint("well", Optional.empty(), 100, 9, WorkHours.ALWAYS, OptionalDouble.empty(), 0);
    private final List<WaterPoint> morePoints = new ArrayList<>();
    private final List<Rain> rain = new ArrayList<>();
    private final List<Field> fields = new ArrayList<>();

    TwoFieldsADay(int planters) {
        this.planters = planters;
    }

    /** Adds a field; days count from the season's first. */
    TwoFieldsADay field(int opens, int closes, double lateWeight, String... allowedPlanters) {
        String id = "F" + fields.size();
        fields.add(WithDefaults.field(
                id,
                id,
                fieldHa,
                Optional.empty(),
                List.of(),
                "corn",
                new DateWindow(FIRST.plusDays(opens), FIRST.plusDays(closes)),
                "standard",
                Drainage.WELL,
                lateWeight,
                Set.of(allowedPlanters)));
        return this;
    }

    /** Water for one field a day: the one hose is open for so long, and a rig takes no more at once. */
    TwoFieldsADay waterForOneFieldADay() {
        nurseTankL = 200;
        WorkHours hours = new WorkHours(List.of(new DaySpan(START_S - 3600, START_S - 3600 + 8)));
        well = WithDefaults.waterPoint("well", Optional.empty(), 25, 1, hours, OptionalDouble.empty(), 0);
        return this;
    }

    /** Fields added after are a thousandth larger, and a day is long enough to plant two of them. */
    TwoFieldsADay aThousandthLarger() {
        fieldHa = FIELD_HA * 1.001;
        dayWorkS = DAY_WORK_S + 5;
        return this;
    }

    /** To move to a field takes so long. */
    TwoFieldsADay moveTimeS(int seconds) {
        moveTimeS = seconds;
        return this;
    }

    /** The well is so far from all else, and a nurse tank holds no more than a planter's. */
    TwoFieldsADay farFromWater(double metres) {
        metresToWater = metres;
        nurseTankL = 400;
        return this;
    }

    /** The well gives no more than that, a spring at the same place much faster but not so much a day; a nurse tank holds no more than a planter's. */
    TwoFieldsADay slowWellAndSpring(double flowLPerS, double springLADay) {
        nurseTankL = 400;
        well = WithDefaults.waterPoint(
                "well", Optional.empty(), flowLPerS, 9, WorkHours.ALWAYS, OptionalDouble.empty(), 0);
        morePoints.add(WithDefaults.waterPoint(
                "spring", Optional.empty(), 100, 9, WorkHours.ALWAYS, OptionalDouble.of(springLADay), 0));
        return this;
    }

    /** On all days but the first it rains so long after the planters have begun, and for the rest of the day all is wet. */
    TwoFieldsADay rainAfter(int seconds, int days) {
        for (int day = 1; day < days; day++) {
            rain.add(new Rain(FIRST.plusDays(day), START_S + seconds, 20));
        }
        return this;
    }

    Season season(int days) {
        return new Season(
                "two fields a day",
                FIRST,
                FIRST.plusDays(days - 1L),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(), Set.of()),
                Map.of("yard", Optional.of(new GeoPoint(0, 0))),
                List.of(WithDefaults.recipe("standard", 100, 2, 2 * 3600)),
                fields,
                IntStream.range(0, planters)
                        .<Applicator>mapToObj(i -> planter("P" + i))
                        .toList(),
                IntStream.range(0, planters).mapToObj(i -> rig("R" + i)).toList(),
                Stream.concat(Stream.of(well), morePoints.stream()).toList(),
                List.of(new CompostLot("windrow", 1e4, FIRST)),
                new Drying(0, 0.025, 0, 0),
                rain,
                Optional.empty(),
                (from, to) -> from.equals("well") == to.equals("well") ? 0 : metresToWater,
                Goals.DEFAULT,
                DisplayUnits.METRIC,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private Planter planter(String id) {
        WorkHours hours = new WorkHours(List.of(new DaySpan(START_S, START_S + dayWorkS)));
        return WithDefaults.planter(id, 10, 0.75, 2, 0.5, 400, 5, 60, moveTimeS, "yard", hours);
    }

    private Rig rig(String id) {
        return WithDefaults.rig(
                id,
                150,
                20,
                600,
                0,
                nurseTankL,
                4,
                10,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                ExtractAt.FIELD,
                "yard",
                WorkHours.ALWAYS);
    }
}
