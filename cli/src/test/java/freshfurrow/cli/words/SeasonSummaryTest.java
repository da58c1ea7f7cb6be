package freshfurrow.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.season.CheckedSeason;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.season.Work;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class SeasonSummaryTest {
    @Test
    void howMuchTimesVaryIsToldWithWhatIsUsual() {
        assertThat(summary(TimeSpread.USUAL))
                .contains(
                        "Times vary around those of the season file (`spread`)",
                        "  batches by 15 %, transfers by 10 %, drives by 15 %, field work by 10 % (standard deviation)",
                        "  each machine breaks down once in 80 h of work on average, for 1 h 30 min");
        assertThat(summary(new TimeSpread(0, 0, 0, 0, Optional.empty()))).contains("  no machine breaks down");
        assertThat(String.join("\n", SeasonSummary.lines(CheckedSeason.of(ExampleSeason.season()))))
                .doesNotContain("vary");
    }

    private static List<String> summary(TimeSpread spread) {
        return SeasonSummary.lines(CheckedSeason.of(
                ExampleSeason.season().change().spread(Optional.of(spread)).season()));
    }

    @Test
    void aSeasonIsSummedUpBeforeItIsPlanned() {
        // Days: 14 ha at 72 ha a day. The tank of 2,000 L lasts for 10 ha at 200 L/ha.
        assertThat(String.join("\n", SeasonSummary.lines(CheckedSeason.of(ExampleSeason.season()))))
                .isEqualTo("""
                        Season example, Mon 2027-04-19 to Sun 2027-04-25

                        Crop     Fields      Area  Compost    Water  Days needed  Days available  Windows
                        corn          1   8.00 ha    16 kg  1,600 L          0.1               6  Mon 2027-04-19 to Sun 2027-04-25
                        soybean       2   6.00 ha    12 kg  1,200 L          0.1               4  Mon 2027-04-19 to Thu 2027-04-22
                        all           3  14.00 ha    28 kg  2,800 L          0.2               6  Mon 2027-04-19 to Sun 2027-04-25

                        Planters
                          P1: field capacity 7.20 ha/h, 10 h 00 min a day: 72.00 ha a day

                        Largest load that the tank and the hold time allow
                          P1 with standard: 2,000 L for 10.00 ha, tank full, hold time 5 h 00 min

                        Compost
                          By Tue 2027-04-20: 8 kg needed for fields whose windows close by then, 20 kg on hand
                          Whole season: 28 kg needed, 26 kg on hand

                        Rigs, loaded with a full nurse tank and the compost for one batch
                          R1: 3,000 kg of water + 16 kg of compost = 3,016 kg, payload 3,500 kg
                          Not counted: tanks, drum, pump, hoses, fuel and people.
                          R1: to count its compost in buckets, weigh a full one, take off the empty one, and give the rest as its `bucket`.

                        Taken where the season file says nothing (see docs/season-file.md)
                          R1: no batch takes less than 5 min (`leastBatchTime`)
                          P1: no fill of less than 10 % of the tank, but to finish something (`leastFill`)
                          Setting rigs up and closing them up takes no time (`setUp`, `closeUp`)
                          Planters are not flushed (`flush`)
                          Hooking up for a draw takes no time (`hookUp`)
                          A day on which less than 1.00 ha of a larger field is planted weighs as much as 45 min of work (`scrap`, `leastPiece`)
                          A day on which a machine comes out for no load weighs as much as 60 min of work (`callOut`)

                        Cautions
                          Compost is 2 kg short.
                          R1: that leaves 484 kg of payload for tanks, drum, pump, fuel and people. Weigh the loaded rig before it goes on the road.

                        Days needed: area / (effective field capacity x hours a day), all planters at work. Fills, driving, waiting
                        and rain are not included here; `plan` works them in.
                        Safety: Local codes, manufacturers' manuals and licensed professionals come first. See docs/safety.md.""");
    }

    @Test
    void whatIsFixedIsListedWithWhatCannotBeKept() {
        Season season = ExampleSeason.season();
        List<Field> fields = season.fields();
        List<String> lines = lines(season.change()
                .rain(List.of(new Rain(ExampleSeason.MONDAY, 12 * 3600, 25)))
                .fields(List.of(
                        fixed(fields.get(0), Optional.of("P1"), Optional.of(ExampleSeason.TUESDAY)),
                        fixed(fields.get(1), Optional.empty(), Optional.of(ExampleSeason.WEDNESDAY)),
                        fixed(fields.get(2), Optional.of("P1"), Optional.empty())))
                .season());
        assertThat(String.join("\n", lines)).contains("""
                        Fixed (`fixed`)
                          N40: fixed to P1, to start on Tue 2027-04-20
                          S80: fixed to start on Wed 2027-04-21
                          E20: fixed to P1
                        """);
        assertThat(lines)
                .contains(
                        "  N40: fixed to P1, to start on Tue 2027-04-20, and no plan can keep that: its ground is too wet until Wed 2027-04-21 00:00.",
                        "  S80: fixed to start on Wed 2027-04-21, which is late: its window closes on Tue 2027-04-20.");
    }

    @Test
    void aDayThatIsTooFullForWhatIsFixedToItIsACaution() {
        Season season = ExampleSeason.season();
        assertThat(lines(season.change()
                        .fields(Stream.of(80, 72)
                                .map(ha -> fixed(
                                        season.fields()
                                                .get(0)
                                                .change()
                                                .id("F" + ha)
                                                .name("F" + ha)
                                                .areaHa(ha)
                                                .field(),
                                        Optional.empty(),
                                        Optional.of(ExampleSeason.TUESDAY)))
                                .toList())
                        .season()))
                .contains(
                        "  F80, F72: fixed to start on Tue 2027-04-20, and no plan can keep that: planting all but the largest"
                                + " takes P1 10 h 12 min at the least, and its day has 10 h 00 min.");
    }

    @Test
    void keysOfPlantingWithoutExtractThatChangeNothingAreCautions() {
        Season season = ExampleSeason.season();
        Planter patient = season.planters()
                .get(0)
                .change()
                .longestWaitS(OptionalInt.of(3600))
                .planter();
        Season waits = season.change().applicators(List.of(patient)).season();
        String longestWait =
                "  P1: `longestWait` has no effect, as nothing is planted without extract unless `goals.untreated` is given.";
        assertThat(lines(waits)).contains(longestWait);
        assertThat(lines(without(waits))).doesNotContain(longestWait);

        Season weighs = fields(season, field -> field.change().extractWeight(2).field());
        String extractWeight =
                "  corn, soybean: `extractWeight` has no effect, as nothing is planted without extract unless `goals.untreated` is given.";
        assertThat(lines(weighs)).contains(extractWeight);
        assertThat(lines(without(weighs))).doesNotContain(extractWeight);

        Season sprays = fields(weighs, field -> field.change().work(Work.SPRAY).field());
        assertThat(lines(without(sprays)))
                .contains(
                        "  `goals.untreated` has no effect: all fields are sprayed, and nothing is sprayed without extract.",
                        "  corn, soybean: `extractWeight` has no effect, as nothing is sprayed without extract.");
    }

    @Test
    void whereFieldsMayBePlantedWithoutExtractThatIsSaidOfWhatIsShort() {
        assertThat(lines(without(ExampleSeason.season())))
                .contains(
                        "  Compost is 2 kg short. Fields may be planted without extract (`goals.untreated`).",
                        "  P1: waits for a rig as long as it takes before it plants without extract (`longestWait`)");
    }

    @Test
    void thePricesThatPlansAreJudgedByAreListedAndWhatHasNone() {
        assertThat(lines(byMoney(10_000)))
                .contains(
                        "Prices that plans are judged by (`costs`, `goals.by: money`)",
                        "  hours 38.00/h, compost 0.25/kg, late 10.00/ha/d, unplanted 10,000.00/ha",
                        "  no price, and so no say: roads, untreated, water, overtime")
                .noneMatch(line -> line.contains("Leaving fields out pays"));
    }

    @Test
    void whereLeavingFieldsOutPaysThatIsSaid() {
        assertThat(lines(byMoney(0)))
                .anyMatch(
                        line -> line.startsWith(
                                "  Leaving fields out pays: unplanted area costs 0.00/ha, and planting costs more on 3 fields, in compost and planting time alone up to "));
        assertThat(lines(ExampleSeason.season())).noneMatch(line -> line.contains("Prices that plans"));
    }

    private static Season byMoney(double unserved) {
        Costs prices = new Costs(Optional.empty(), 24, 14, 0, 0.25, 10, unserved, 0, 0, 0, Map.of());
        Season season = ExampleSeason.season();
        return season.change()
                .goals(season.goals().withByMoney(Optional.of(prices)))
                .season();
    }

    private static List<String> lines(Season season) {
        return SeasonSummary.lines(CheckedSeason.of(season));
    }

    private static Season without(Season season) {
        return season.change()
                .goals(season.goals().withUntreatedDays(OptionalDouble.of(4)))
                .season();
    }

    private static Season fields(Season season, UnaryOperator<Field> change) {
        return season.change()
                .fields(season.fields().stream().map(change).toList())
                .season();
    }

    private static Field fixed(Field field, Optional<String> planter, Optional<LocalDate> on) {
        return field.change().fixed(new Fixed(planter, on)).field();
    }

    @Test
    void whatIsTakenForARecipeAndARigIsToldToTheSecond() {
        Season season = ExampleSeason.season();
        Rig quick = season.rigs().get(0).change().batchTimeS(600).rig();
        Recipe silent = new Recipe("silent", 200, 2, 18_000, OptionalInt.empty());

        assertThat(SeasonSummary.lines(CheckedSeason.of(season.change()
                        .rigs(List.of(quick))
                        .recipes(List.of(season.recipes().get(0), silent))
                        .season())))
                .contains(
                        "  silent: loads are planned 30 min short of their use-by time (`reserve`)",
                        "  R1: no batch takes less than 3 min 20 s (`leastBatchTime`)");
    }

    /** Ten batches of 16 kg, and 16 kg at 0.1 min/kg. */
    @Test
    void whatIsTakenForCompostThatIsFetchedIsTold() {
        Season season = ExampleSeason.season();

        assertThat(SeasonSummary.lines(CheckedSeason.of(season.change()
                        .compost(season.compost().stream()
                                .map(lot -> lot.withAt(Optional.of("yard")))
                                .toList())
                        .season())))
                .contains(
                        "Rigs, loaded with a full nurse tank and all the compost that they hold",
                        "  R1: 3,000 kg of water + 160 kg of compost = 3,160 kg, payload 3,500 kg",
                        "  R1: has no more than 160 kg of compost on board (`compostLoad`)",
                        "  R1: to load that of one full batch, 16 kg, takes 1 min 36 s (`compostLoading`)",
                        "  A compost trip weighs as much as 20 min of work (`compostTrip`)");
    }

    @Test
    void noBucketIsAskedForWhereOneWasWeighed() {
        Season season = ExampleSeason.season();
        Rig weighed =
                season.rigs().get(0).change().bucketKg(OptionalDouble.of(11)).rig();

        assertThat(SeasonSummary.lines(
                        CheckedSeason.of(season.change().rigs(List.of(weighed)).season())))
                .noneMatch(line -> line.contains("bucket"));
    }

    @Test
    void aNightInWhichClocksGoBackIsToldOf() {
        LocalDate saturday = LocalDate.of(2027, 11, 6);
        assertThat(SeasonSummary.lines(CheckedSeason.of(ExampleSeason.season()
                                .change()
                                .timezone(ZoneId.of("America/Chicago"))
                                .first(saturday)
                                .last(saturday.plusDays(2))
                                .season()))
                        .stream()
                        .map(String::strip)
                        .collect(Collectors.joining(" ")))
                .contains(
                        "Clocks go back on Sun 2027-11-07 at 02:00, to 01:00: use-by times after that are in the new time."
                                + " Check the time twice.");
    }
}
