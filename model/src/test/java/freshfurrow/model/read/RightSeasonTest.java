package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.ClockFace;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.DistanceUnit;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.quantity.VolumeUnit;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.KindsOfMachine;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WorkHours;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A right season is read as it is meant, in SI units, with the stated defaults. */
final class RightSeasonTest {
    private static final double GALLON = 3.785411784;
    private static final double POUND = 0.45359237;
    private static final double HECTARES_AN_ACRE = 0.40468564224;
    private static final double CLOSE = 1e-9;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theHeadHoursAndDaysAreRead() {
        Season season = WrittenSeason.in(folder).season();
        assertThat(season.name()).isEqualTo("Example");
        assertThat(season.first()).isEqualTo(LocalDate.of(2027, 4, 19));
        assertThat(season.last()).isEqualTo(LocalDate.of(2027, 6, 5));
        assertThat(season.timezone()).isEqualTo(ZoneId.of("America/Chicago"));
        assertThat(season.closed().weekdays()).containsExactly(DayOfWeek.SUNDAY);
        assertThat(season.closed().dates()).containsExactly(LocalDate.of(2027, 5, 31));
        assertThat(season.rain()).containsExactly(new Rain(LocalDate.of(2027, 5, 3), 14 * 3600, 0.8 * 25.4));
    }

    @Test
    void aPlanterIsReadInSiUnits() {
        Planter planter = WrittenSeason.in(folder).season().planters().get(0);
        assertThat(planter.widthM()).isCloseTo(12.192, within(CLOSE));
        assertThat(planter.rowSpacingM()).isCloseTo(0.762, within(CLOSE));
        assertThat(planter.speedMPerS()).isCloseTo(2.2352, within(CLOSE));
        assertThat(planter.fieldEfficiency()).isEqualTo(0.65);
        assertThat(planter.tankL()).isCloseTo(600 * GALLON, within(CLOSE));
        assertThat(planter.roadSpeedMPerS()).isCloseTo(6.7056, within(CLOSE));
        assertThat(planter.fillSetupS()).isEqualTo(360);
        assertThat(planter.moveTimeS()).isEqualTo(720);
        assertThat(planter.at()).isEqualTo("yard");
        assertThat(planter.hours())
                .isEqualTo(new WorkHours(List.of(new DaySpan(25_200, 43_200), new DaySpan(45_000, 72_000))));
    }

    @Test
    void everyKindOfMachineIsRead() {
        assertThat(WrittenSeason.in(folder)
                        .with(
                                "rigs:\n",
                                "sprayers:\n  H1: {rate: 2 ac/h, tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min,"
                                        + " moveTime: 12 min, at: yard}\nrigs:\n")
                        .season()
                        .machines()
                        .map(Object::getClass))
                .containsExactlyInAnyOrderElementsOf(KindsOfMachine.all());
    }

    @Test
    void aRigIsReadInSiUnits() {
        Rig rig = WrittenSeason.in(folder).season().rigs().get(0);
        assertThat(rig.drumL()).isCloseTo(40 * GALLON, within(CLOSE));
        assertThat(rig.batchCompostKg()).isCloseTo(30 * POUND, within(CLOSE));
        assertThat(rig.batchTimeS()).isEqualTo(900);
        assertThat(rig.cleanTimeS()).isEqualTo(180);
        assertThat(rig.nurseTankL()).isCloseTo(1200 * GALLON, within(CLOSE));
        assertThat(rig.transferLPerS()).isCloseTo(GALLON, within(CLOSE));
        assertThat(rig.payloadKg()).hasValueCloseTo(12_000 * POUND, within(CLOSE));
        assertThat(rig.extractAt()).isEqualTo(ExtractAt.FIELD);
    }

    @Test
    void compostThatIsFetchedHasItsPlaceItsLoadAndItsLoadingTime() {
        Season season = WrittenSeason.in(folder)
                .with("from: 2027-04-01", "from: 2027-04-01, at: yard")
                .with(
                        "payload: 12000 lb",
                        "payload: 12000 lb\n    emptyWeight: 1000 lb\n    compostLoad: 600 lb\n    compostLoading: 0.05 min/lb")
                .with("refill: 30 min", "refill: 30 min, compostTrip: 25 min")
                .season();
        Rig rig = season.rigs().get(0);
        assertThat(season.saysWhereCompostLies()).isTrue();
        assertThat(season.compost().get(0).at()).contains("yard");
        assertThat(rig.emptyWeightKg()).hasValueCloseTo(1_000 * POUND, within(CLOSE));
        assertThat(rig.compostLoadKg()).isCloseTo(600 * POUND, within(CLOSE));
        assertThat(rig.compostLoadingMinPerKg()).isCloseTo(0.05 / POUND, within(CLOSE));
        assertThat(season.goals().compostTripMin()).isEqualTo(25);
    }

    @Test
    void whereNothingIsSaidARigHasTheCompostOfTenBatchesAndLoadsItInATenthOfAMinuteAKilogram() {
        Season season = WrittenSeason.in(folder).season();
        Rig rig = season.rigs().get(0);
        assertThat(season.saysWhereCompostLies()).isFalse();
        assertThat(rig.mostCompostKg()).isCloseTo(300 * POUND, within(CLOSE));
        assertThat(rig.compostLoadingMinPerKg()).isEqualTo(0.1);
    }

    /** 12,000 lb less 1,900 lb empty less 1,200 gal x 8.345 lb leave 86 lb. */
    @Test
    void aPayloadLeavesRoomForCompostBesideTheEmptyWeightAndAFullNurseTank() {
        Rig rig = WrittenSeason.in(folder)
                .with("payload: 12000 lb", "payload: 12000 lb\n    emptyWeight: 1900 lb\n    compostLoad: 600 lb")
                .season()
                .rigs()
                .get(0);
        assertThat(rig.mostCompostKg() / POUND).isCloseTo(12_000 - 1_900 - 1_200 * GALLON / POUND, within(1e-6));
    }

    @Test
    void theBucketOfARigIsAsItWasWeighedAndNeverAssumed() {
        Season unweighed = WrittenSeason.in(folder).season();
        assertThat(unweighed.rigs().get(0).bucketKg()).isEmpty();
        Season weighed = WrittenSeason.in(folder)
                .with("payload: 12000 lb", "payload: 12000 lb\n    bucket: 9 kg")
                .season();
        assertThat(weighed.rigs().get(0).bucketKg()).hasValueCloseTo(9.0, within(CLOSE));
    }

    @Test
    void waterCompostRecipeAndCropAreRead() {
        Season season = WrittenSeason.in(folder).season();
        WaterPoint well = season.waterPoints().get(0);
        assertThat(well.at()).contains(new GeoPoint(41.01, -97.02));
        assertThat(well.flowLPerS()).isCloseTo(40 * GALLON / 60, within(CLOSE));
        assertThat(well.dailyLimitL()).hasValueCloseTo(9000 * GALLON, within(1e-6));
        assertThat(season.compost().get(0).massKg()).isCloseTo(4000 * POUND, within(CLOSE));
        assertThat(season.compost().get(0).from()).isEqualTo(LocalDate.of(2027, 4, 1));
        assertThat(season.recipe("standard").mixLPerHa()).isCloseTo(20 * GALLON / HECTARES_AN_ACRE, within(CLOSE));
        assertThat(season.recipe("standard").compostKgPerHa()).isCloseTo(2 * POUND / HECTARES_AN_ACRE, within(CLOSE));
        assertThat(season.recipe("standard").holdS()).isEqualTo(18_000);
    }

    @Test
    void aFieldTakesFromItsCropWhatItLeavesOut() {
        Season season = WrittenSeason.in(folder)
                .with("lateWeight: 1.0", "lateWeight: 1.5, recipe: standard")
                .season();
        Field field = season.fields().get(1);
        assertThat(field.id()).isEqualTo("S80");
        assertThat(field.name()).as("without a name it is called by its id").isEqualTo("S80");
        assertThat(field.areaHa()).isCloseTo(80 * HECTARES_AN_ACRE, within(CLOSE));
        assertThat(field.at()).contains(new GeoPoint(40.98, -97));
        assertThat(field.window().last()).isEqualTo(LocalDate.of(2027, 5, 12));
        assertThat(field.recipe()).isEqualTo("standard");
        assertThat(field.lateWeight()).isEqualTo(1.5);
        assertThat(field.drainage()).isEqualTo(Drainage.MODERATE);
        assertThat(field.allows(season.applicator("P1"))).isTrue();
        assertThat(field.outline()).isEmpty();
    }

    @Test
    void aTableOfFieldsIsReadWithAllItsColumns() {
        List<Field> fields =
                WrittenSeason.in(folder).withFields("fields.csv", """
                        id,name,area (ac),lat,lon,crop,window,recipe,drainage,lateWeight,planters
                        N40,"Forty, north",40,41.02,-97.01,corn,2027-05-01/2027-05-20,standard,Poor,2,P1
                        S80,,32 ha,40.98,-97.0,corn,,,,,
                        """).season().fields();
        Field north = fields.get(0);
        assertThat(north.name()).isEqualTo("Forty, north");
        assertThat(north.areaHa()).isCloseTo(40 * HECTARES_AN_ACRE, within(CLOSE));
        assertThat(north.window().first()).isEqualTo(LocalDate.of(2027, 5, 1));
        assertThat(north.drainage()).isEqualTo(Drainage.POOR);
        assertThat(north.lateWeight()).isEqualTo(2);
        assertThat(north.planters()).isEqualTo(Set.of("P1"));
        assertThat(fields.get(1).areaHa()).isCloseTo(32, within(CLOSE));
        assertThat(fields.get(1).window().first()).isEqualTo(LocalDate.of(2027, 4, 20));
    }

    @Test
    void whatIsLeftOutHasTheStatedDefaults() {
        String text = WrittenSeason.RIGHT.replaceAll(
                "(?m)^(closed|travel|drying|rain|goals):.*\\n(?: .*\\n)*|^    (payload|extractAt): .*\\n", "");
        Season season = new WrittenSeason(folder, text)
                .with(", lateWeight: 1.0", "")
                .with(", hoses: 1, dailyLimit: 9000 gal, treatment: 0 min, hookUp: 2 min", "")
                .season();
        assertThat(season.closed().weekdays()).isEmpty();
        assertThat(season.closed().dates()).isEmpty();
        assertThat(season.rain()).isEmpty();
        assertThat(season.goals())
                .isEqualTo(new Goals(
                        30,
                        20,
                        20,
                        1,
                        0.5,
                        10,
                        0.1,
                        Goals.DEFAULT.movedMin(),
                        45,
                        1,
                        60,
                        2,
                        1,
                        Goals.DEFAULT.steadyDays(),
                        OptionalDouble.empty()));
        assertThat(season.drying()).isEqualTo(new Drying(2.54, 1 / 25.4, 2 / 25.4, 3 / 25.4));
        assertThat(season.fields().get(0).lateWeight()).isEqualTo(1);
        WaterPoint well = season.waterPoints().get(0);
        assertThat(well.hours()).isEqualTo(WorkHours.ALWAYS);
        assertThat(well.hoses()).isEqualTo(1);
        assertThat(well.dailyLimitL()).isEqualTo(OptionalDouble.empty());
        assertThat(well.treatmentS()).isZero();
        assertThat(well.hookUpS()).isZero();
        assertThat(season.rigs().get(0).payloadKg()).isEqualTo(OptionalDouble.empty());
        assertThat(season.rigs().get(0).extractAt()).isEqualTo(ExtractAt.FIELD);
        Season straight = WrittenSeason.in(folder)
                .with("roadFactor: 1.3", "roadFactor: 1")
                .season();
        assertThat(season.distances().metres("yard", "well"))
                .isCloseTo(1.3 * straight.distances().metres("yard", "well"), within(CLOSE));
    }

    @Test
    void aTableOfDistancesHoldsInBothDirections() {
        Season season = WrittenSeason.in(folder)
                .with("roadFactor: 1.3", "matrix: ways.csv")
                .with("lat: 41.02, lon: -97.01, ", "")
                .withFile(
                        "ways.csv",
                        "from,to,distance (mi)\nyard,well,2\nyard,N40,3\nyard,S80,4\nwell,N40,3.5 km\nwell,S80,1\nS80,N40,2\nwell,yard,2\n")
                .season();
        assertThat(season.distances().metres("well", "yard")).isCloseTo(2 * 1609.344, within(CLOSE));
        assertThat(season.distances().metres("N40", "well")).isCloseTo(3500, within(CLOSE));
        assertThat(season.distances().metres("N40", "N40")).isZero();
        assertThat(season.fields().get(0).at())
                .as("a place needs no coordinates then")
                .isEmpty();
    }

    @Test
    void ownHoursOfMachinesGoBeforeTheSeasons() {
        Season season = WrittenSeason.in(folder)
                .with("payload: 12000 lb", "hours: 06:00/21:00")
                .season();
        assertThat(season.rigs().get(0).hours()).isEqualTo(new WorkHours(List.of(new DaySpan(21_600, 75_600))));
        assertThat(season.applicators().get(0).hours().spans()).hasSize(2);
    }

    @Test
    void jsonIsReadAsYamlIs() {
        Season yaml = WrittenSeason.in(folder)
                .with(
                        "goals: {refill: 30 min, waterTrip: 20 min}",
                        "goals: {\"refill\": \"30 min\", \"dump\": \"2 min/kg\"}")
                .season();
        WrittenSeason.in(folder).withFile("season.json", Json.of(folder.resolve("season.yaml")));
        Reading json = SeasonFiles.read(folder.resolve("season.json"), List.of());
        assertThat(WrittenSeason.problems(json)).isEmpty();
        Season read = ((Reading.Valid) json).season();
        assertThat(read).isEqualTo(yaml);
        assertThat(((Reading.Valid) json).file()).isEqualTo("season.json");
    }

    @Test
    void resultsAreInTheUnitsOfTheSeason() {
        assertThat(WrittenSeason.in(folder).season().units()).isEqualTo(DisplayUnits.US);
        assertThat(WrittenSeason.in(folder)
                        .with("mix: 20 gal/ac, compost: 2 lb/ac", "mix: 187 L/ha, compost: 2.2 kg/ha")
                        .with("speed: 5 mph", "speed: 8 km/h")
                        .season()
                        .units())
                .isEqualTo(DisplayUnits.METRIC);
        assertThat(WrittenSeason.in(folder)
                        .with("mix: 20 gal/ac, compost: 2 lb/ac", "mix: 187 L/ha, compost: 2 lb/ac")
                        .season()
                        .units())
                .isEqualTo(new DisplayUnits(AreaUnit.HECTARE, VolumeUnit.LITRE, MassUnit.POUND, DistanceUnit.MILE));
    }

    @Test
    void theClockGoesWithTheUnitOfAreaUnlessTheSeasonSaysOtherwise() {
        assertThat(WrittenSeason.in(folder).season().units().clock()).isEqualTo(ClockFace.TWELVE_HOURS);
        assertThat(DisplayUnits.METRIC.clock()).isEqualTo(ClockFace.TWENTY_FOUR_HOURS);
        assertThat(WrittenSeason.in(folder)
                        .with("name: Example,", "name: Example, clock: 24h,")
                        .season()
                        .units())
                .isEqualTo(DisplayUnits.US.withClock(ClockFace.TWENTY_FOUR_HOURS));
    }
}
