package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExampleSeason;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

final class SeasonSummaryTest {
    @Test
    void aSeasonIsSummedUpBeforeItIsPlanned() {
        // Days: 14 ha at 72 ha a day. The tank of 2,000 L lasts for 10 ha at 200 L/ha.
        assertThat(String.join("\n", SeasonSummary.lines(ExampleSeason.season())))
                .isEqualTo("""
                        Season example, Mon 2027-04-19 to Sun 2027-04-25

                        Crop     Fields      Area  Compost    Water  Days needed  Days there  Windows
                        corn          1   8.00 ha    16 kg  1,600 L          0.1           6  Mon 2027-04-19 to Sun 2027-04-25
                        soybean       2   6.00 ha    12 kg  1,200 L          0.1           4  Mon 2027-04-19 to Thu 2027-04-22
                        all           3  14.00 ha    28 kg  2,800 L          0.2           6  Mon 2027-04-19 to Sun 2027-04-25

                        Planters
                          P1: field capacity 7.20 ha/h, 10 h 00 min a day: 72.00 ha a day

                        Largest load that tank and hold time allow
                          P1 with standard: 2,000 L for 10.00 ha, tank 100 % full, hold time 5 h 00 min

                        Compost
                          until Tue 2027-04-20: 8 kg for windows that close by then, 20 kg there
                          whole season: 28 kg needed, 26 kg there

                        Rigs, loaded: full nurse tank and the compost of one batch
                          R1: 3,000 kg of water + 16 kg of compost = 3,016 kg, payload 3,500 kg
                          Not counted: tanks, drum, pump, hoses, fuel and people.

                        Look out
                          compost is 2 kg short
                          R1: 484 kg of its payload are left for all that is not counted; weigh it before it goes on the road

                        Days needed: area / (effective field capacity x hours a day), all planters at work. Fills, moves, waiting
                        and rain are not in these sums; `plan` plays them out.
                        Safety: Local codes, makers' manuals and licensed practice come first. See docs/safety.md.""");
    }

    @Test
    void aNightInWhichClocksGoBackIsToldOf() {
        LocalDate saturday = LocalDate.of(2027, 11, 6);
        assertThat(SeasonSummary.lines(ExampleSeason.season()
                                .change()
                                .timezone(ZoneId.of("America/Chicago"))
                                .first(saturday)
                                .last(saturday.plusDays(2))
                                .season())
                        .stream()
                        .map(String::strip)
                        .collect(Collectors.joining(" ")))
                .contains(
                        "Clocks go back on Sun 2027-11-07 at 02:00, to 01:00: use-by times are by the clock as it then shows."
                                + " Check the time twice.");
    }
}
