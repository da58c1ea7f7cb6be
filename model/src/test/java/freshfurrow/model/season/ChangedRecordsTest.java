package freshfurrow.model.season;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.quantity.DisplayUnits;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ChangedRecordsTest {
    private static final LocalDate DAY = LocalDate.of(2027, 4, 19);
    private static final LocalDateTime NOON = DAY.atTime(12, 0);

    /** Pairs of records that have no part in common. */
    static Stream<Arguments> pairs() {
        return Stream.concat(pairsOfMachines(), pairsOfOthers());
    }

    private static Stream<Arguments> pairsOfMachines() {
        List<Machine> machines = season().machines().toList();
        List<Machine> others = otherSeason().machines().toList();
        return IntStream.range(0, machines.size()).mapToObj(i -> Arguments.of(machines.get(i), others.get(i)));
    }

    private static Stream<Arguments> pairsOfOthers() {
        return Stream.of(
                Arguments.of(season(), otherSeason()),
                Arguments.of(season().fields().get(0), otherSeason().fields().get(0)),
                Arguments.of(
                        season().waterPoints().get(0),
                        otherSeason().waterPoints().get(0)),
                Arguments.of(season().recipes().get(0), otherSeason().recipes().get(0)),
                Arguments.of(season().compost().get(0), otherSeason().compost().get(0)),
                Arguments.of(
                        season().ground().orElseThrow(), otherSeason().ground().orElseThrow()),
                Arguments.of(new WetDay(DAY, 0, 40, 30, 5), new WetDay(DAY.plusDays(1), 60, 41, 31, 6)),
                Arguments.of(
                        season().standing().orElseThrow(),
                        otherSeason().standing().orElseThrow()),
                Arguments.of(
                        new Standing.Tank("L1", "R1", new Mix("standard", 1, NOON, List.of())),
                        new Standing.Tank("L2", "R2", new Mix("strong", 2, NOON, List.of()))),
                Arguments.of(
                        new Mix("standard", 1, NOON, List.of("B1")),
                        new Mix("strong", 2, NOON.plusHours(1), List.of("B2"))));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void aChangeOfOnePartLeavesAllOthersAsTheyWere(Record from, Record other) throws ReflectiveOperationException {
        int changes = 0;
        for (RecordComponent part : from.getClass().getRecordComponents()) {
            Object value = part.getAccessor().invoke(other);
            assertThat(value).as(part.getName()).isNotEqualTo(part.getAccessor().invoke(from));
            Optional<Record> changed = changed(from, part, value);
            if (changed.isPresent()) {
                changes++;
                for (RecordComponent each : from.getClass().getRecordComponents()) {
                    assertThat(each.getAccessor().invoke(changed.get()))
                            .as(each.getName() + " after a change of " + part.getName())
                            .isEqualTo(each.getAccessor().invoke(each.getName().equals(part.getName()) ? other : from));
                }
            }
        }
        assertThat(changes).isPositive();
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void aChangeOfNothingIsTheSame(Record from) throws ReflectiveOperationException {
        Optional<Method> change = method(from.getClass(), "change");
        if (change.isPresent()) {
            assertThat(made(change.get().invoke(from), from.getClass())).isEqualTo(from);
        }
    }

    @Test
    void everyKindOfMachineIsTried() {
        assertThat(Stream.of(season(), otherSeason()))
                .allSatisfy(season -> assertThat(season.machines().map(Object::getClass))
                        .containsExactlyInAnyOrderElementsOf(KindsOfMachine.all()));
    }

    @Test
    void everyPartOfALargeRecordCanBeChanged() {
        for (Class<?> type :
                List.of(Season.class, Field.class, Planter.class, Sprayer.class, Rig.class, WaterPoint.class)) {
            Class<?> change = method(type, "change").orElseThrow().getReturnType();
            assertThat(Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName))
                    .allSatisfy(part -> assertThat(method(change, part)).isPresent());
        }
    }

    private static Optional<Record> changed(Record from, RecordComponent part, Object value)
            throws ReflectiveOperationException {
        Optional<Method> change = method(from.getClass(), "change");
        if (change.isPresent()) {
            Object begun = change.get().invoke(from);
            Method one = method(begun.getClass(), part.getName()).orElseThrow();
            return Optional.of(made(one.invoke(begun, value), from.getClass()));
        }
        String name = part.getName();
        Optional<Method> with =
                method(from.getClass(), "with" + Character.toUpperCase(name.charAt(0)) + name.substring(1));
        return with.isEmpty()
                ? Optional.empty()
                : Optional.of((Record) with.get().invoke(from, value));
    }

    private static Record made(Object change, Class<?> type) throws ReflectiveOperationException {
        Method made = Arrays.stream(change.getClass().getMethods())
                .filter(method -> method.getReturnType().equals(type))
                .findFirst()
                .orElseThrow();
        return (Record) made.invoke(change);
    }

    private static Optional<Method> method(Class<?> type, String name) {
        return Arrays.stream(type.getMethods())
                .filter(method -> method.getName().equals(name))
                .findFirst();
    }

    private static Season season() {
        return new Season(
                "one",
                DAY,
                DAY.plusDays(9),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(), Set.of()),
                Map.of("yard", Optional.of(new GeoPoint(41, -97))),
                List.of(WithDefaults.recipe("standard", 200, 10, 18_000)),
                List.of(WithDefaults.field(
                        "F1",
                        "first",
                        1,
                        Optional.empty(),
                        List.of(),
                        "corn",
                        new DateWindow(DAY, DAY),
                        "standard",
                        Drainage.WELL,
                        1,
                        Set.of())),
                List.of(
                        WithDefaults.planter("P1", 10, 0.75, 2, 0.5, 1000, 5, 300, 600, "yard", WorkHours.ALWAYS),
                        new Sprayer(
                                "S1",
                                new Swath.Hose(2),
                                1000,
                                0.1,
                                5,
                                300,
                                600,
                                0,
                                "yard",
                                WorkHours.ALWAYS,
                                WorkHours.ALWAYS)),
                List.of(WithDefaults.rig(
                        "R1",
                        160,
                        50,
                        900,
                        180,
                        2000,
                        2,
                        10,
                        OptionalDouble.empty(),
                        OptionalDouble.of(14),
                        ExtractAt.FIELD,
                        "yard",
                        WorkHours.ALWAYS)),
                List.of(WithDefaults.waterPoint(
                        "well", Optional.empty(), 5, 1, WorkHours.ALWAYS, OptionalDouble.empty(), 0)),
                List.of(new CompostLot("heap", 1000, DAY)),
                new Drying(0, 1, 1, 1),
                List.of(),
                Optional.of(new GroundRecord("one", Map.of(), Map.of())),
                (from, to) -> 1,
                Goals.DEFAULT,
                DisplayUnits.METRIC,
                List.of(),
                Optional.of(Standing.at(NOON)),
                Optional.empty());
    }

    private static Season otherSeason() {
        WorkHours hours = new WorkHours(List.of(new DaySpan(3600, 7200)));
        GeoPoint point = new GeoPoint(40, -96);
        return new Season(
                "two",
                DAY.plusDays(1),
                DAY.plusDays(8),
                ZoneId.of("America/Chicago"),
                new ClosedDays(Set.of(DayOfWeek.SUNDAY), Set.of()),
                Map.of("barn", Optional.of(point)),
                List.of(WithDefaults.recipe("strong", 250, 20, 14_400).withReserveS(600)),
                List.of(new Field(
                        "F2",
                        "second",
                        2,
                        Optional.of(point),
                        List.of(List.of(point)),
                        "soy",
                        new DateWindow(DAY, DAY.plusDays(1)),
                        "strong",
                        Drainage.POOR,
                        2,
                        3,
                        Set.of("P2"),
                        Work.SPRAY,
                        List.of(Judgement.fit(NOON)),
                        new Fixed(Optional.of("P2"), Optional.of(DAY)))),
                List.of(
                        WithDefaults.planter("P2", 12, 0.5, 3, 0.6, 1200, 6, 360, 660, "barn", hours)
                                .change()
                                .leastFill(0.2)
                                .overtimeS(840)
                                .flushS(500)
                                .longestWaitS(OptionalInt.of(2000))
                                .planter(),
                        new Sprayer(
                                "S2",
                                new Swath.Boom(9, 2, 0.6),
                                1200,
                                0.2,
                                6,
                                360,
                                660,
                                500,
                                "barn",
                                hours,
                                hours,
                                Optional.of("R3"))),
                List.of(WithDefaults.rig(
                                "R2",
                                200,
                                60,
                                960,
                                240,
                                2500,
                                3,
                                12,
                                OptionalDouble.of(3000),
                                OptionalDouble.of(10),
                                ExtractAt.WATER,
                                "barn",
                                hours)
                        .change()
                        .leastBatchTime(OptionalInt.of(60))
                        .emptyWeightKg(OptionalDouble.of(800))
                        .compostLoad(OptionalDouble.of(500))
                        .compostLoadingMinPerKg(0.2)
                        .setUpS(300)
                        .closeUpS(400)
                        .rig()),
                List.of(new WaterPoint("pond", Optional.of(point), 6, 2, hours, OptionalDouble.of(5000), 60, 90)),
                List.of(new CompostLot("pile", 2000, DAY.plusDays(1), Optional.of("pond"))),
                new Drying(1, 2, 2, 2),
                List.of(new Rain(DAY, 0, 5)),
                Optional.of(new GroundRecord(
                        "two", Map.of(DAY, 5.0), Map.of(Drainage.POOR, List.of(new WetDay(DAY, 40, 30, 5))))),
                (from, to) -> 2,
                new Goals(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, OptionalDouble.of(4)),
                DisplayUnits.US,
                List.of(new Outage("R2", NOON, NOON.plusHours(1))),
                Optional.of(new Standing(
                        NOON.plusHours(1),
                        Map.of(
                                "P2",
                                new Standing.OfPlanter(
                                        "barn",
                                        NOON.plusHours(1),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty())),
                        Map.of(
                                "R2",
                                new Standing.OfRig(
                                        "barn",
                                        NOON.plusHours(1),
                                        5,
                                        Optional.empty(),
                                        true,
                                        Map.of(),
                                        Optional.of(NOON))),
                        Map.of("pond", 5.0),
                        Map.of("F2", new Standing.Promise("P2", DAY.plusDays(2))),
                        1,
                        2)),
                Optional.of(TimeSpread.USUAL));
    }
}
