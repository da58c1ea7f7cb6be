package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExampleLog;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.log.Fact;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LogReportTest {
    private static final Season SEASON = ExampleSeason.season();

    private final ExampleLog log = new ExampleLog();

    @Test
    void aPieceOfAFieldIsAddedToThoseBefore() {
        log.planted("08:00", "N40", 3, "").planted("10:00", "N40", 2.5, "");

        assertThat(added())
                .containsExactly(
                        "Entry 2, Tue 2027-04-20 10:00: planted N40, 2.50 ha",
                        "N40: 5.50 ha of 8.00 ha planted, 2.50 ha left.");
    }

    @Test
    void workThatWasTimedSaysHowLongItTook() {
        log.timed("08:00", new Fact.Transferred("R1", 500, Optional.of("L0001")), Duration.ofSeconds(570));
        assertThat(added())
                .containsExactly("Entry 1, Tue 2027-04-20 08:00: transfer by R1, 500 L, load L0001, in 9 min 30 s");

        log.timed("09:00", new Fact.Driven("R1", "well", "N40"), Duration.ofMinutes(7));
        assertThat(added()).containsExactly("Entry 2, Tue 2027-04-20 09:00: R1 from well to N40, in 7 min");
    }

    @Test
    void aLoadThatWasTooOldIsSaidSo() {
        // 07:00 to 12:30 is half an hour over the hold time of 5 h.
        log.batch("07:00", 10, 6, "L0001").planted("12:30", "N40", 8, "L0001");

        assertThat(added())
                .containsExactly(
                        "Entry 2, Tue 2027-04-20 12:30: planted N40, 8.00 ha, from load L0001",
                        "N40: finished, 8.00 ha planted.",
                        "Load L0001: TOO OLD: used up to 5 h 30 min after its oldest batch (hold time of standard 5 h 00 min).");
    }

    @Test
    void theHoldTimeItselfIsNotTooOld() {
        log.batch("07:00", 10, 6, "L0001").planted("12:00", "N40", 8, "L0001");

        assertThat(added())
                .contains(
                        "Load L0001: used up to 5 h 00 min after its oldest batch (hold time of standard 5 h 00 min).");
    }

    @Test
    void moreCompostThanThereWasIsTold() {
        // 20 kg and 6 kg are there.
        log.batch("07:00", 12, 2, "L0001", "L0002").batch("09:00", 11, 2, "L0002");

        assertThat(added())
                .containsExactly(
                        "Entry 2, Tue 2027-04-20 09:00: batch by R1, 11 kg of windrow and 2 kg of bought, for load L0002",
                        "windrow: 23 kg used, 0 kg of 20 kg left; the log has 3 kg more than there was.",
                        "bought: 4 kg used, 2 kg of 6 kg left.",
                        "Load L0002: 2 batches logged, 27 kg of compost in total.");
    }

    @Test
    void takingBackShowsTheSumsWithoutTheEntry() {
        log.planted("08:00", "N40", 3, "").add("08:30", new Fact.Voided(1), "that was S80");

        assertThat(added())
                .containsExactly(
                        "Entry 2, Tue 2027-04-20 08:30: voids entry 1: that was S80",
                        "N40: 0.00 ha of 8.00 ha planted, 8.00 ha left.");
    }

    @Test
    void whatWasSaidOfGroundIsToldWithWhatItMeans() {
        log.add("08:00", new Fact.GroundJudged("N40", false, Optional.of(LocalDateTime.of(2027, 4, 22, 0, 0))));
        assertThat(added())
                .containsExactly(
                        "Entry 1, Tue 2027-04-20 08:00: N40 unfit until Thu 2027-04-22 00:00",
                        "N40: open from Thu 2027-04-22 00:00 on; rain that begins after Tue 2027-04-20 08:00 counts again.");

        log.add("09:00", new Fact.GroundJudged("N40", false, Optional.empty()), "ruts");
        assertThat(added())
                .containsExactly(
                        "Entry 2, Tue 2027-04-20 09:00: N40 unfit until further notice: ruts",
                        "N40: closed until somebody logs that it is fit.");

        log.add("10:00", new Fact.GroundJudged("N40", true, Optional.empty()));
        assertThat(added())
                .containsExactly(
                        "Entry 3, Tue 2027-04-20 10:00: N40 fit for machines",
                        "N40: open from Tue 2027-04-20 10:00 on; rain that begins after Tue 2027-04-20 10:00 counts again.");
    }

    @Test
    void aMachineIsSoFarBehindOrHasCaughtUp() {
        log.add("09:10", new Fact.MachineBehind("P1", Duration.ofMinutes(50)));
        assertThat(added()).containsExactly("Entry 1, Tue 2027-04-20 09:10: P1 50 min behind the plan");
        log.add("10:10", new Fact.MachineBehind("P1", Duration.ZERO));
        assertThat(added()).containsExactly("Entry 2, Tue 2027-04-20 10:10: P1 as far as the plan says");
    }

    @Test
    void aVoidedWordOnGroundLeavesItToRainAndWeather() {
        log.add("08:00", new Fact.GroundJudged("N40", true, Optional.empty()))
                .add("08:10", new Fact.Voided(1), "that was S80");

        assertThat(added())
                .containsExactly(
                        "Entry 2, Tue 2027-04-20 08:10: voids entry 1: that was S80",
                        "N40: open or closed by rain and weather.");
    }

    @Test
    void theListHasAllEntriesAndTheSumsOfThoseThatHold() {
        log.add("07:00", new Fact.WaterDrawn("well", "R1", 3000))
                .add("08:00", new Fact.CompostSpoiled("windrow", OptionalDouble.empty()), "sour")
                .add("08:05", new Fact.Voided(2), "only the top")
                .add("08:10", new Fact.CompostSpoiled("windrow", OptionalDouble.of(5)))
                .add("08:20", new Fact.CompostDelivered("bought", 7))
                .add("09:00", new Fact.RainMeasured(12.7))
                .add("09:10", new Fact.MachineDown("R1", Optional.empty()))
                .add("09:20", new Fact.Noted(), "windy")
                .planted("09:30", "S80", 4, "");

        assertThat(LogReport.list(SEASON, log.log()))
                .containsExactly(
                        "Entry  Time                  Fact",
                        "    1  Tue 2027-04-20 07:00  drawn at well, 3,000 L, by R1",
                        "    2  Tue 2027-04-20 08:00  (void: see entry 3) spoiled, all that was left of windrow: sour",
                        "    3  Tue 2027-04-20 08:05  voids entry 2: only the top",
                        "    4  Tue 2027-04-20 08:10  spoiled, 5 kg of windrow",
                        "    5  Tue 2027-04-20 08:20  delivered, 7 kg of bought",
                        "    6  Tue 2027-04-20 09:00  rain, 12.7 mm",
                        "    7  Tue 2027-04-20 09:10  R1 down until further notice",
                        "    8  Tue 2027-04-20 09:20  note: windy",
                        "    9  Tue 2027-04-20 09:30  planted S80, 4.00 ha",
                        "",
                        "Planted 4.00 ha of 14.00 ha; 1 of 3 fields finished.",
                        "windrow: 0 kg used, 5 kg spoiled, 15 kg of 20 kg left.",
                        "bought: 0 kg used, 7 kg of 7 kg left.");
    }

    @Test
    void anEmptyLogIsSaidToBeEmpty() {
        assertThat(LogReport.list(SEASON, log.log())).containsExactly("The log is empty.");
    }

    private List<String> added() {
        return LogReport.added(SEASON, log.log(), List.of(log.last()));
    }
}
