package freshfurrow.cli.needs;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.WetGround;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A planter plants 7.2 ha/h, works 10 hours a day, and takes 12 min to move to another field. */
final class PromisedDayTest {
    @Test
    void aDayIsTooFullWhenAllFieldsButTheLargestTakeLongerThanIt() {
        // 72 ha take 10 h, and the move 12 min
        assertThat(PromisedDay.tooFull(season(fixed(TUESDAY, 80, 72))))
                .singleElement()
                .satisfies(day -> {
                    assertThat(day.machine().id()).isEqualTo("P1");
                    assertThat(day.day()).isEqualTo(TUESDAY);
                    assertThat(day.fields()).extracting(Field::id).containsExactly("F0", "F1");
                    assertThat(day.all()).isEqualTo(Duration.ofMinutes(10 * 60 + 12));
                    assertThat(day.hours()).isEqualTo(Duration.ofHours(10));
                });
        // 70.56 ha take 9 h 48 min, and the move 12 min: the second is started with the day's last minute
        assertThat(PromisedDay.tooFull(season(fixed(TUESDAY, 80, 70.56)))).isEmpty();
    }

    @Test
    void overtimeIsTimeToo() {
        Season season = season(fixed(TUESDAY, 80, 72));
        Planter longer = season.planters().get(0).change().overtimeS(3600).planter();
        assertThat(PromisedDay.tooFull(
                        season.change().applicators(List.of(longer)).season()))
                .isEmpty();
    }

    @Test
    void fieldsOnOtherDaysOrForAnyOfSeveralMachinesFillNoDay() {
        List<Field> fields = fixed(TUESDAY, 80, 72);
        assertThat(PromisedDay.tooFull(season(List.of(
                        fields.get(0),
                        fields.get(1).change().fixed(on(WEDNESDAY)).field()))))
                .isEmpty();
        Season two = season(fields)
                .change()
                .applicators(List.of(ExampleSeason.planter("P1"), ExampleSeason.planter("P2")))
                .season();
        assertThat(PromisedDay.tooFull(two)).isEmpty();
        Season oneOfTwo = two.change()
                .fields(fields.stream()
                        .map(field -> field.change()
                                .fixed(new Fixed(Optional.of("P2"), Optional.of(TUESDAY)))
                                .field())
                        .toList())
                .season();
        assertThat(PromisedDay.tooFull(oneOfTwo))
                .extracting(day -> day.machine().id())
                .containsExactly("P2");
    }

    @Test
    void rainThatDrivesAMachineFromAFieldMayMakeRoomForTheNext() {
        Season wet = season(fixed(TUESDAY, 80, 72))
                .change()
                .rain(List.of(new Rain(TUESDAY, 9 * 3600, 20)))
                .season();
        assertThat(PromisedDay.tooFull(wet)).isEmpty();
    }

    @Test
    void groundIsWetAllDayWhereNoHourOfTheDayIsLeft() {
        // 25 mm on moderately drained ground: ceil(25 x 0.08) = 2 days, so until the first hour of Wednesday
        Season wet = season(fixed(TUESDAY, 8))
                .change()
                .rain(List.of(new Rain(MONDAY, 9 * 3600, 25)))
                .season();
        assertThat(PromisedDay.wetAllDay(wet, wet.fields().get(0)))
                .map(WetGround::to)
                .contains(at(WEDNESDAY, "00:00"));
        Season evening = season(fixed(TUESDAY, 8))
                .change()
                .rain(List.of(new Rain(TUESDAY, 17 * 3600 - 60, 25)))
                .season();
        assertThat(PromisedDay.wetAllDay(evening, evening.fields().get(0))).isEmpty();
        Season dry = season(fixed(TUESDAY, 8));
        assertThat(PromisedDay.wetAllDay(dry, dry.fields().get(0))).isEmpty();
    }

    private static List<Field> fixed(LocalDate day, double... areasHa) {
        return IntStream.range(0, areasHa.length)
                .mapToObj(i -> ExampleSeason.field("F" + i, areasHa[i], "corn", MONDAY, MONDAY.plusDays(6))
                        .change()
                        .fixed(on(day))
                        .field())
                .toList();
    }

    private static Fixed on(LocalDate day) {
        return new Fixed(Optional.empty(), Optional.of(day));
    }

    private static Season season(List<Field> fields) {
        return ExampleSeason.season().change().fields(fields).season();
    }
}
