package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What people said stands over rain that had begun by then. Poorly drained ground stays closed a day per mm. */
class JudgedGroundTest {
    private static final LocalDateTime DAY_1 = WorkedSeason.day(1).atStartOfDay();
    private static final LocalDateTime DAY_2 = WorkedSeason.day(2).atStartOfDay();
    private static final LocalDateTime DAY_3 = WorkedSeason.day(3).atStartOfDay();
    private static final LocalDateTime DAY_4 = WorkedSeason.day(4).atStartOfDay();
    private static final LocalDateTime END = WorkedSeason.day(6).atStartOfDay();

    /** Closed from 08:00 of the second day until the fifth. */
    private final Season season = new WorkedSeason().days(6).rain(1, "08:00", 3).season();

    @Test
    void groundThatIsFoundFitIsOpenFromThenOn() {
        assertThat(wet(season, Judgement.fit(DAY_2.plusHours(7))))
                .containsExactly(new WetGround(DAY_1.plusHours(8), DAY_2.plusHours(7)));
    }

    @Test
    void rainThatBeginsLaterClosesItAgainForAsLongAsItWould() {
        Season more = new WorkedSeason()
                .days(6)
                .rain(1, "08:00", 3)
                .rain(2, "12:00", 2)
                .season();

        assertThat(wet(more, Judgement.fit(DAY_2.plusHours(7))))
                .containsExactly(
                        new WetGround(DAY_1.plusHours(8), DAY_2.plusHours(7)),
                        new WetGround(DAY_2.plusHours(12), DAY_4));
    }

    @Test
    void rainThatBeginsAsItIsSaidWasKnown() {
        assertThat(wet(season, Judgement.fit(DAY_1.plusHours(8)))).isEmpty();
    }

    @Test
    void groundThatIsFoundUnfitIsClosedUntilThenAndOpenAfter() {
        assertThat(wet(season, new Judgement(DAY_1.plusHours(9), DAY_2.plusHours(12))))
                .containsExactly(new WetGround(DAY_1.plusHours(8), DAY_2.plusHours(12)));
        assertThat(wet(season, new Judgement(DAY_1.plusHours(9), END)))
                .containsExactly(new WetGround(DAY_1.plusHours(8), END));
        assertThat(wet(new WorkedSeason().days(6).season(), new Judgement(DAY_2.plusHours(9), DAY_3)))
                .containsExactly(new WetGround(DAY_2.plusHours(9), DAY_3));
    }

    @Test
    void theNewestWordHolds() {
        assertThat(wet(season, new Judgement(DAY_1.plusHours(9), END), Judgement.fit(DAY_3)))
                .containsExactly(new WetGround(DAY_1.plusHours(8), DAY_3));
        assertThat(wet(season, Judgement.fit(DAY_2), new Judgement(DAY_3, DAY_4)))
                .containsExactly(new WetGround(DAY_1.plusHours(8), DAY_2), new WetGround(DAY_3, DAY_4));
    }

    /** A record knows no hours: the rain of the day on which it is said was known. Half a millimetre on the next day closes nothing. */
    @Test
    void wetDaysOfARecordAreOpenUntilADayOnWhichItRainsAgain() {
        List<WetDay> wet = IntStream.range(1, 5)
                .mapToObj(day -> new WetDay(WorkedSeason.day(day), 45, 39, 0))
                .toList();
        Map<LocalDate, Double> rain =
                Map.of(WorkedSeason.day(1), 12.0, WorkedSeason.day(2), 0.5, WorkedSeason.day(4), 8.0);
        Season recorded = new WorkedSeason()
                .days(6)
                .season()
                .change()
                .drying(new Drying(1, 0, 0.1, 1))
                .ground(Optional.of(new GroundRecord("invented", rain, Map.of(Drainage.POOR, wet))))
                .season();

        assertThat(wet(recorded, Judgement.fit(DAY_1.plusHours(10))))
                .containsExactly(
                        new WetGround(DAY_1, DAY_1.plusHours(10)),
                        new WetGround(DAY_4, WorkedSeason.day(5).atStartOfDay()));
    }

    /** Rain at 08:00 of the first day closes both for two days; A is found fit at 09:00 and gone on with, B waits to be dry. */
    @Test
    void onlyTheFieldThatWasJudgedIsOpen() {
        WorkedPlan before =
                new WorkedSeason().days(4).field("A", 5).field("B", 5).plan("A B");
        SeasonLog log = new SeasonLog(List.of(
                new Entry(1, DAY_1.plusHours(8), new Fact.RainMeasured(20), ""),
                new Entry(2, DAY_1.plusHours(9), new Fact.GroundJudged("A", true, Optional.empty()), "")));

        WorkedPlan plan =
                UnderWay.at(before, "09:00", UnderWay.NOTHING_NEW, log).goOn();

        assertThat(plan.planter("P1", "plant"))
                .containsExactly(
                        "1 09:00:00 - 1 09:56:40 plant A 3.400 ha", "3 07:26:40 - 3 08:50:00 plant B 5.000 ha");
    }

    @Test
    void aWordThatIsVoidDoesNotHold() {
        WorkedPlan before = new WorkedSeason().days(4).field("A", 5).plan("A");
        Entry unfit = new Entry(1, DAY_1.plusHours(8), new Fact.GroundJudged("A", false, Optional.of(DAY_3)), "");
        Entry taken = new Entry(2, DAY_1.plusHours(9), new Fact.Voided(1), "that was B");

        assertThat(UnderWay.at(before, "09:00", UnderWay.NOTHING_NEW, new SeasonLog(List.of(unfit)))
                        .start()
                        .judged())
                .containsExactly(Map.entry("A", List.of(new Judgement(DAY_1.plusHours(8), DAY_3))));
        assertThat(UnderWay.at(before, "09:00", UnderWay.NOTHING_NEW, new SeasonLog(List.of(unfit, taken)))
                        .start()
                        .judged())
                .isEmpty();
    }

    private static List<WetGround> wet(Season season, Judgement... judged) {
        return WetGround.of(season, new FieldGround(Drainage.POOR, List.of(judged)));
    }
}
