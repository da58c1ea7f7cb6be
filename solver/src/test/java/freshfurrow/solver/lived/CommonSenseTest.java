package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.LivedVariant;
import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.example.Tries;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.Springs;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What anybody would say of variants without a computer, over recorded springs; 1 % is left to the luck of the search. */
class CommonSenseTest {
    private static final Reading.Valid READ =
            (Reading.Valid) SeasonFiles.read(Path.of("../scenarios/weather-spring"), List.of());
    private static final Season SEASON = READ.season();
    private static final SpringSource SOURCE = source();
    private static final List<Integer> SPRINGS =
            IntStream.rangeClosed(1, Tries.of(30)).boxed().toList();
    private static final List<Integer> TRAINING =
            IntStream.rangeClosed(1_001, 1_000 + Tries.of(20)).boxed().toList();

    @Test
    void aSecondRigNeverMakesWaitingWorse() {
        List<LivedVariant> lived = live(SEASON, withRigs(2));

        assertThat(sum(lived.get(1), SpringFigures::waitH))
                .isLessThanOrEqualTo(sum(lived.get(0), SpringFigures::waitH));
    }

    @Test
    void whereNobodyWaitsForARigOneMoreChangesNextToNothing() {
        List<LivedVariant> lived = live(withRigs(3), withRigs(4));

        assertThat(sum(lived.get(0), SpringFigures::waitH)).isLessThan(SPRINGS.size());
        assertAlmostTheSame(lived, SpringFigures::fills);
        assertAlmostTheSame(lived, SpringFigures::finishS);
        assertAlmostTheSame(lived, SpringFigures::lateHaDays);
    }

    @Test
    void twiceTheCompostNeverLeavesMoreUnplanted() {
        Season scarce = SEASON.change().compost(scaled(0.6)).season();
        Season twice = SEASON.change().compost(scaled(1.2)).season();

        List<LivedVariant> lived = live(scarce, twice);

        assertThat(sum(lived.get(0), SpringFigures::unservedHa)).isPositive();
        assertThat(sum(lived.get(1), SpringFigures::unservedHa))
                .isLessThanOrEqualTo(sum(lived.get(0), SpringFigures::unservedHa));
    }

    @Test
    void aLongerHoldTimeNeverGivesMoreFills() {
        List<LivedVariant> lived = live(withHold(2), withHold(8));

        assertThat(sum(lived.get(1), SpringFigures::fills))
                .isLessThanOrEqualTo(1.01 * sum(lived.get(0), SpringFigures::fills));
    }

    private static void assertAlmostTheSame(List<LivedVariant> two, ToDoubleFunction<SpringFigures> figure) {
        double one = sum(two.get(0), figure);
        assertThat(sum(two.get(1), figure)).isCloseTo(one, within(0.01 * one));
    }

    private static SpringSource source() {
        SeasonWeather weather = READ.weather().orElseThrow();
        Springs springs = Springs.of(weather, SEASON.first(), SEASON.last(), 1);
        RainHours hours = new RainHours(1);
        return number -> hours.in(springs.spring(number - 1).ground(), number, SEASON.first());
    }

    private static List<LivedVariant> live(Season... seasons) {
        LivingRules rules = new LivingRules(
                "common sense",
                "season.yaml",
                SEASON.first(),
                SEASON.last(),
                DisplayUnits.US,
                Optional.empty(),
                "station.csv",
                SPRINGS.size(),
                1,
                4_000,
                0,
                0,
                false,
                false,
                Set.of(Work.PLANT));
        List<Candidate> candidates = new ArrayList<>();
        for (Season season : seasons) {
            candidates.add(new Candidate("variant", season, Optional.empty(), "0".repeat(64)));
        }
        ComparedSprings compared = new SpringComparison(rules, SOURCE, 2, SpringProgress.SILENT)
                .run(candidates, SPRINGS, List.of(), TRAINING, false);
        return compared.variants().stream().map(variant -> variant.lived()).toList();
    }

    private static Season withRigs(int count) {
        Rig one = SEASON.rigs().get(0);
        List<Rig> rigs = IntStream.rangeClosed(1, count)
                .mapToObj(i -> one.change().id("R" + i).rig())
                .toList();
        return SEASON.change().rigs(rigs).season();
    }

    private static Season withHold(int hours) {
        return SEASON.change()
                .recipes(SEASON.recipes().stream()
                        .map(recipe -> recipe.withHoldS(hours * 3600))
                        .toList())
                .season();
    }

    private static List<CompostLot> scaled(double factor) {
        return SEASON.compost().stream()
                .map(lot -> lot.withMassKg(lot.massKg() * factor))
                .toList();
    }

    private static double sum(LivedVariant variant, ToDoubleFunction<SpringFigures> figure) {
        return variant.springs().stream().mapToDouble(figure).sum();
    }
}
