package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.PlanterChange;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.RigChange;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Swath;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WetDay;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.Work;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A season whose arithmetic can be done in the head. Unless a test says otherwise:
 *
 * <ul>
 *   <li>Recipe: 200 L/ha = 0.02 L/m2 and 10 kg/ha, hold time 5 h. 1 ha is 200 L and 10 kg.
 *   <li>Planter P1, 07:00 to 19:00: 10 m x 2 m/s x 0.5 = 10 m2/s, so 1 ha in 1,000 s. Tank 1,000 L: 5 ha, planted in
 *       5,000 s = 1:23:20. Road 5 m/s, 600 s for a change of field, 300 s setup for a fill.
 *   <li>Rig R1, 06:00 to 20:00: a full batch is 50 kg (5 ha, 1,000 L) in 160 L of drum water, 900 s, cleaning 180 s.
 *       Nurse tank 2,000 L. Transfer 2 L/s, so 1,000 L take 300 s + 500 s = 0:13:20. Road 10 m/s.
 *   <li>Water: one hose of 5 L/s, open always: 2,000 L in 400 s = 0:06:40.
 *   <li>Roads: yard or shed to well 1,000 m (rig 100 s), well to any field 2,000 m (rig 200 s), yard or shed to any
 *       field 3,000 m (planter 600 s), field to field 1,000 m (planter 200 s, rig 100 s).
 * </ul>
 *
 * So the first field is reached at 07:00:00 + 600 s + 600 s = 07:20:00, and R1 stands there with 2,000 L on board at
 * 06:00:00 + 100 s + 400 s + 200 s = 06:11:40.
 */
final class WorkedSeason {
    /** A Monday. */
    static final LocalDate FIRST = LocalDate.of(2027, 4, 19);

    private static final SeasonSource SOURCE =
            new SeasonSource("Worked", "season.yaml", "0".repeat(64), DisplayUnits.METRIC);

    private final List<Recipe> recipes = new ArrayList<>(List.of(WithDefaults.recipe("standard", 200, 10, 5 * 3600)));
    private final List<Applicator> planters = new ArrayList<>(List.of(planter("P1")));
    private final List<Rig> rigs = new ArrayList<>(List.of(rig("R1")));
    private final List<WaterPoint> waterPoints = new ArrayList<>(List.of(well("well")));
    private final List<CompostLot> compost = new ArrayList<>(List.of(new CompostLot("heap", 10_000, FIRST)));
    private final List<Field> fields = new ArrayList<>();
    private final List<Rain> rain = new ArrayList<>();
    private final List<WetDay> wetDays = new ArrayList<>();
    private final Map<String, Double> roads = new HashMap<>();
    private Drying drying = new Drying(0, 0, 0.1, 1);
    private final Set<LocalDate> closed = new HashSet<>();
    private int days = 3;
    private OptionalDouble untreatedDays = OptionalDouble.empty();
    private Optional<Costs> prices = Optional.empty();

    WorkedSeason days(int length) {
        days = length;
        return this;
    }

    /** Plans are judged by money. */
    WorkedSeason prices(Costs byMoney) {
        prices = Optional.of(byMoney);
        return this;
    }

    WorkedSeason closed(int day) {
        closed.add(day(day));
        return this;
    }

    WorkedSeason recipe(String id, double mixLPerHa, double compostKgPerHa, int holdS) {
        recipes.removeIf(recipe -> recipe.id().equals(id));
        recipes.add(WithDefaults.recipe(id, mixLPerHa, compostKgPerHa, holdS));
        return this;
    }

    WorkedSeason hold(int holdS) {
        return recipe("standard", 200, 10, holdS);
    }

    /** Of the standard recipe, which has none otherwise. */
    WorkedSeason reserve(int seconds) {
        recipes.replaceAll(recipe -> recipe.id().equals("standard") ? recipe.withReserveS(seconds) : recipe);
        return this;
    }

    /** A field with a window of the first day to the last. */
    WorkedSeason field(String id, double areaHa) {
        return field(id, areaHa, field -> field);
    }

    WorkedSeason field(String id, double areaHa, UnaryOperator<FieldChoice> choice) {
        fields.add(choice.apply(FieldChoice.standard(days)).field(id, areaHa));
        return this;
    }

    WorkedSeason planter(String id, UnaryOperator<PlanterChoice> choice) {
        planters.removeIf(planter -> planter.id().equals(id));
        planters.add(choice.apply(new PlanterChoice()).planter(id));
        return this;
    }

    /** In place of planter P1, or beside the others: a boom of 10 m at 2 m/s and 0.5, or as it is said, that is else like P1. */
    WorkedSeason sprayer(String id, UnaryOperator<SprayerChoice> choice) {
        planters.removeIf(planter -> planter.id().equals(id) || planter.id().equals("P1"));
        planters.add(choice.apply(new SprayerChoice()).sprayer(id));
        return this;
    }

    /** Beside the planters, mounted on rig R1. */
    WorkedSeason mounted(String id) {
        planters.add(new SprayerChoice().on("R1").sprayer(id));
        return this;
    }

    WorkedSeason rig(String id, UnaryOperator<RigChoice> choice) {
        rigs.removeIf(rig -> rig.id().equals(id));
        rigs.add(choice.apply(new RigChoice()).rig(id));
        return this;
    }

    WorkedSeason waterPoint(String id, OptionalDouble dailyLimitL, WorkHours hours, int treatmentS) {
        waterPoints.removeIf(point -> point.id().equals(id));
        waterPoints.add(WithDefaults.waterPoint(id, Optional.empty(), 5, 1, hours, dailyLimitL, treatmentS));
        return this;
    }

    /** Time to hook up for each draw at all points. */
    WorkedSeason hookUp(int seconds) {
        waterPoints.replaceAll(point -> point.change().hookUpS(seconds).waterPoint());
        return this;
    }

    /** Replaces the heap by lots of their own. */
    WorkedSeason lots(CompostLot... lots) {
        compost.clear();
        compost.addAll(List.of(lots));
        return this;
    }

    /** Replaces the heap by one that lies in the yard, from where rigs fetch it in 6 s a kilogram. */
    WorkedSeason heapInTheYard(double kg) {
        return lots(lot("heap", kg, 1, "yard"));
    }

    /** A lot with a place. */
    static CompostLot lot(String id, double kg, int fromDay, String place) {
        return new CompostLot(id, kg, day(fromDay), Optional.of(place));
    }

    /** Fields may be planted without extract. */
    WorkedSeason untreated(double lateDays) {
        untreatedDays = OptionalDouble.of(lateDays);
        return this;
    }

    WorkedSeason rain(int day, String from, double mm) {
        rain.add(new Rain(FIRST.plusDays(day - 1L), clock(from), mm));
        return this;
    }

    /** A day on which the ground of poorly drained fields is too wet by a weather record. */
    WorkedSeason wetGround(int day) {
        wetDays.add(new WetDay(day(day), 32, 30, 10));
        return this;
    }

    WorkedSeason road(String a, String b, double metres) {
        roads.put(a + " " + b, metres);
        roads.put(b + " " + a, metres);
        return this;
    }

    Season season() {
        return new Season(
                        "Worked",
                        FIRST,
                        FIRST.plusDays(days - 1L),
                        ZoneOffset.UTC,
                        new ClosedDays(Set.of(), closed),
                        Map.of("yard", Optional.of(new GeoPoint(41, -97)), "shed", Optional.of(new GeoPoint(41, -97))),
                        recipes,
                        fields,
                        List.copyOf(planters),
                        rigs,
                        waterPoints,
                        compost,
                        drying,
                        rain,
                        Optional.empty(),
                        this::metres,
                        new Goals(
                                30,
                                20,
                                20,
                                1,
                                1,
                                10,
                                1,
                                Goals.DEFAULT.movedMin(),
                                0,
                                1,
                                0,
                                2,
                                1,
                                Goals.DEFAULT.steadyDays(),
                                untreatedDays,
                                prices),
                        DisplayUnits.METRIC,
                        List.of(),
                        Optional.empty(),
                        Optional.empty())
                .change()
                .ground(
                        wetDays.isEmpty()
                                ? Optional.empty()
                                : Optional.of(new GroundRecord("a record", Map.of(), Map.of(Drainage.POOR, wetDays))))
                .season();
    }

    /** The plan of one list a planter, each a string of field ids with spaces between; the audit has nothing against it. */
    WorkedPlan plan(String... lists) {
        WorkedPlan plan = forbiddenPlan(lists);
        assertThat(Audit.check(plan.season(), plan.plan())).isEmpty();
        return plan;
    }

    /** The plan of one list a planter, where some fields are planted without extract by decision. */
    WorkedPlan planWithout(Set<String> withoutExtract, String... lists) {
        WorkedPlan plan = record(withoutExtract, lists);
        assertThat(Audit.check(plan.season(), plan.plan())).isEmpty();
        return plan;
    }

    /** The plan of lists that break a rule. */
    WorkedPlan forbiddenPlan(String... lists) {
        return record(Set.of(), lists);
    }

    private WorkedPlan record(Set<String> withoutExtract, String... lists) {
        List<List<String>> byPlanter = new ArrayList<>();
        for (String list : lists) {
            byPlanter.add(list.isEmpty() ? List.of() : List.of(list.split(" ", -1)));
        }
        Season season = season();
        PlantingOrders orders = new PlantingOrders(byPlanter, withoutExtract);
        return new WorkedPlan(season, PlanRecorder.record(CompiledSeason.of(season), orders, SOURCE));
    }

    static LocalDate day(int number) {
        return FIRST.plusDays(number - 1L);
    }

    static WorkHours hours(String... spans) {
        List<DaySpan> list = new ArrayList<>();
        for (String span : spans) {
            int slash = span.indexOf('/');
            list.add(new DaySpan(clock(span.substring(0, slash)), clock(span.substring(slash + 1))));
        }
        return new WorkHours(list);
    }

    private static int clock(String time) {
        return time.equals("24:00") ? 86_400 : LocalTime.parse(time).toSecondOfDay();
    }

    private double metres(String from, String to) {
        Double own = roads.get(from + " " + to);
        if (own != null) {
            return own;
        }
        if (from.equals(to)) {
            return 0;
        }
        boolean yard = from.equals("yard") || to.equals("yard") || from.equals("shed") || to.equals("shed");
        boolean water = isWaterPoint(from) || isWaterPoint(to);
        if (yard) {
            return water ? 1000 : 3000;
        }
        return water ? 2000 : 1000;
    }

    private boolean isWaterPoint(String id) {
        return waterPoints.stream().anyMatch(point -> point.id().equals(id));
    }

    private static Planter planter(String id) {
        return new PlanterChoice().planter(id);
    }

    private static Rig rig(String id) {
        return new RigChoice().rig(id);
    }

    private static WaterPoint well(String id) {
        return WithDefaults.waterPoint(id, Optional.empty(), 5, 1, WorkHours.ALWAYS, OptionalDouble.empty(), 0);
    }

    record FieldChoice(
            DateWindow window, String recipe, Drainage drainage, double lateWeight, Set<String> planters, Work work) {
        static FieldChoice standard(int days) {
            return new FieldChoice(
                    new DateWindow(FIRST, day(days)), "standard", Drainage.MODERATE, 1, Set.of(), Work.PLANT);
        }

        FieldChoice window(int firstDay, int lastDay) {
            return new FieldChoice(
                    new DateWindow(day(firstDay), day(lastDay)), recipe, drainage, lateWeight, planters, work);
        }

        FieldChoice recipe(String id) {
            return new FieldChoice(window, id, drainage, lateWeight, planters, work);
        }

        FieldChoice drainage(Drainage kind) {
            return new FieldChoice(window, recipe, kind, lateWeight, planters, work);
        }

        FieldChoice lateWeight(double weight) {
            return new FieldChoice(window, recipe, drainage, weight, planters, work);
        }

        FieldChoice sprayed() {
            return new FieldChoice(window, recipe, drainage, lateWeight, planters, Work.SPRAY);
        }

        FieldChoice only(String planter) {
            return new FieldChoice(window, recipe, drainage, lateWeight, Set.of(planter), work);
        }

        Field field(String id, double areaHa) {
            Field planted = WithDefaults.field(
                    id,
                    id,
                    areaHa,
                    Optional.empty(),
                    List.of(),
                    "corn",
                    window,
                    recipe,
                    drainage,
                    lateWeight,
                    planters);
            return planted.change().work(work).field();
        }
    }

    /** A planter of 10 m, 1 ha in 1000 s, with a tank of 1000 L, but for what is said. */
    static final class PlanterChoice {
        private final PlanterChange change = WithDefaults.planter(
                        "P1", 10, 0.75, 2, 0.5, 1000, 5, 300, 600, "yard", WorkedSeason.hours("07:00/19:00"))
                .change();

        PlanterChoice capacity(double width, double speed, double efficiency) {
            change.widthM(width).speedMPerS(speed).fieldEfficiency(efficiency);
            return this;
        }

        PlanterChoice tank(double litres) {
            change.tankL(litres);
            return this;
        }

        PlanterChoice leastFill(double share) {
            change.leastFill(share);
            return this;
        }

        PlanterChoice longestWait(int seconds) {
            change.longestWaitS(OptionalInt.of(seconds));
            return this;
        }

        PlanterChoice overtime(int seconds) {
            change.overtimeS(seconds);
            return this;
        }

        PlanterChoice fillSetup(int seconds) {
            change.fillSetupS(seconds);
            return this;
        }

        PlanterChoice flush(int seconds) {
            change.flushS(seconds);
            return this;
        }

        /** Stands in its field when the season begins, and changes fields in no time. */
        PlanterChoice unfoldedAt(String field) {
            change.at(field).moveTimeS(0);
            return this;
        }

        PlanterChoice hours(String... spans) {
            change.hours(WorkedSeason.hours(spans));
            return this;
        }

        Planter planter(String id) {
            return change.id(id).planter();
        }
    }

    /** A sprayer of 10 m2/s with a tank of 1000 L, but for what is said. */
    static final class SprayerChoice {
        private Swath swath = new Swath.Boom(10, 2, 0.5);
        private double tankL = 1000;
        private WorkHours hours = WorkedSeason.hours("07:00/19:00");
        private WorkHours sprayHours = WorkHours.ALWAYS;
        private Optional<String> on = Optional.empty();

        SprayerChoice hose(double m2PerS) {
            swath = new Swath.Hose(m2PerS);
            return this;
        }

        SprayerChoice on(String rig) {
            on = Optional.of(rig);
            return this;
        }

        SprayerChoice tank(double litres) {
            tankL = litres;
            return this;
        }

        SprayerChoice sprayHours(String... spans) {
            sprayHours = WorkedSeason.hours(spans);
            return this;
        }

        Sprayer sprayer(String id) {
            return new Sprayer(id, swath, tankL, 0.1, 5, 300, 600, 0, "yard", hours, sprayHours, on);
        }
    }

    /** A rig with batches of 50 kg in 900 s, that pumps 2 L/s, but for what is said. */
    static final class RigChoice {
        private final RigChange change = WithDefaults.rig(
                        "R1",
                        160,
                        50,
                        900,
                        180,
                        2000,
                        2,
                        10,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        ExtractAt.FIELD,
                        "yard",
                        WorkedSeason.hours("06:00/20:00"))
                .change();

        RigChoice batch(double waterL, double compostKg) {
            change.drumL(waterL).batchCompostKg(compostKg);
            return this;
        }

        RigChoice batchCompost(double kg) {
            change.batchCompostKg(kg);
            return this;
        }

        RigChoice leastBatchTime(int seconds) {
            change.leastBatchTime(OptionalInt.of(seconds));
            return this;
        }

        RigChoice nurseTank(double litres) {
            change.nurseTankL(litres);
            return this;
        }

        RigChoice compostLoad(double kg) {
            change.compostLoad(OptionalDouble.of(kg));
            return this;
        }

        RigChoice payload(double kg, double emptyKg) {
            change.payloadKg(OptionalDouble.of(kg)).emptyWeightKg(OptionalDouble.of(emptyKg));
            return this;
        }

        RigChoice setUp(int seconds) {
            change.setUpS(seconds);
            return this;
        }

        RigChoice closeUp(int seconds) {
            change.closeUpS(seconds);
            return this;
        }

        RigChoice atTheWater() {
            change.extractAt(ExtractAt.WATER);
            return this;
        }

        RigChoice at(String place) {
            change.at(place);
            return this;
        }

        RigChoice hours(String... spans) {
            change.hours(WorkedSeason.hours(spans));
            return this;
        }

        Rig rig(String id) {
            return change.id(id).rig();
        }
    }
}
