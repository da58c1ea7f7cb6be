package freshfurrow.model.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ClockChangesTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final int HOUR_S = 3600;
    /** 02:00 CDT is 01:00 CST. */
    private static final ClockChanges AUTUMN = daysFrom("2027-11-06");
    /** 02:00 CST is 03:00 CDT. */
    private static final ClockChanges SPRING = daysFrom("2027-03-13");

    @Test
    void thatClocksGoBackIsKnown() {
        assertThat(AUTUMN.all())
                .containsExactly(new ClockChanges.Change(at("2027-11-07T02:00"), at("2027-11-07T01:00")));
        assertThat(AUTUMN.all().get(0).back()).isTrue();
        assertThat(SPRING.all())
                .containsExactly(new ClockChanges.Change(at("2027-03-14T02:00"), at("2027-03-14T03:00")));
        assertThat(SPRING.all().get(0).back()).isFalse();
        assertThat(daysFrom("2027-11-08").all()).isEmpty();
        assertThat(daysFrom("2027-11-04").all()).isEmpty();
    }

    @Test
    void whatIsOverBeforeTheHourThatComesTwiceIsByTheClock() {
        assertThat(AUTUMN.after(at("2027-11-06T22:00"), 2 * HOUR_S + 59 * 60)).isEqualTo(at("2027-11-07T00:59"));
    }

    @Test
    void anHourThatComesTwiceIsToldAsItsStart() {
        // 22:00 CDT + 3 h = 01:00 CDT, + 3 h 30 min = 01:30 CDT, + 4 h 30 min = 01:30 CST
        assertThat(AUTUMN.after(at("2027-11-06T22:00"), 3 * HOUR_S)).isEqualTo(at("2027-11-07T01:00"));
        assertThat(AUTUMN.after(at("2027-11-06T22:00"), 7 * HOUR_S / 2)).isEqualTo(at("2027-11-07T01:00"));
        assertThat(AUTUMN.after(at("2027-11-06T22:00"), 9 * HOUR_S / 2)).isEqualTo(at("2027-11-07T01:00"));
    }

    @Test
    void afterClocksWentBackTheyShowAnHourLess() {
        // 22:00 CDT + 5 h = 03:00 CDT = 02:00 CST
        assertThat(AUTUMN.after(at("2027-11-06T22:00"), 5 * HOUR_S)).isEqualTo(at("2027-11-07T02:00"));
        assertThat(AUTUMN.after(at("2027-11-06T22:00"), 8 * HOUR_S)).isEqualTo(at("2027-11-07T05:00"));
        assertThat(AUTUMN.between(at("2027-11-06T22:00"), at("2027-11-07T05:00")))
                .isEqualTo(Duration.ofHours(8));
        assertThat(AUTUMN.after(at("2027-11-07T02:00"), HOUR_S)).isEqualTo(at("2027-11-07T03:00"));
    }

    @Test
    void afterClocksWentForwardTheyShowAnHourMore() {
        // 22:00 CST + 4 h = 02:00 CST = 03:00 CDT
        assertThat(SPRING.after(at("2027-03-13T22:00"), 4 * HOUR_S - 1)).isEqualTo(at("2027-03-14T01:59:59"));
        assertThat(SPRING.after(at("2027-03-13T22:00"), 4 * HOUR_S)).isEqualTo(at("2027-03-14T03:00"));
        assertThat(SPRING.after(at("2027-03-13T22:00"), 8 * HOUR_S)).isEqualTo(at("2027-03-14T07:00"));
        assertThat(SPRING.between(at("2027-03-13T22:00"), at("2027-03-14T07:00")))
                .isEqualTo(Duration.ofHours(8));
    }

    @Property
    void whatPassesIsWhatPassesByTheZone(
            @ForAll @IntRange(max = 2 * 86_400) int from, @ForAll @IntRange(max = 86_400) int s) {
        for (ClockChanges changes : new ClockChanges[] {AUTUMN, SPRING}) {
            LocalDateTime start = changes.all()
                    .get(0)
                    .at()
                    .toLocalDate()
                    .minusDays(1)
                    .atStartOfDay()
                    .plusSeconds(from);
            LocalDateTime end = changes.after(start, s);
            long passed = Duration.between(ZonedDateTime.of(start, CHICAGO), ZonedDateTime.of(end, CHICAGO))
                    .toSeconds();
            assertThat(changes.between(start, end)).isEqualTo(Duration.ofSeconds(passed));
            assertThat(passed).isLessThanOrEqualTo(s);
            boolean cameTwice = changes.all().get(0).back()
                    && end.equals(changes.all().get(0).from());
            boolean inTwo = changes.all().get(0).back()
                    && start.isAfter(changes.all().get(0).from())
                    && start.isBefore(changes.all().get(0).until());
            assertThat(passed == s || cameTwice || inTwo).isTrue();
        }
    }

    private static ClockChanges daysFrom(String first) {
        LocalDateTime midnight = LocalDate.parse(first).atStartOfDay();
        return ClockChanges.of(CHICAGO, midnight, midnight.plusDays(3));
    }

    private static LocalDateTime at(String time) {
        return LocalDateTime.parse(time);
    }
}
