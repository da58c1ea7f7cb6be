package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.Foresight;
import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpringComparisonTest {
    private static final Costs COSTS =
            new Costs(Optional.of("EUR"), 20, 0, 0, 0, 10, 0, 0, 0, 0, Map.of("R1", 4_000.0));

    /** With these it pays to plant. */
    private static final Costs PRICES = new Costs(Optional.of("EUR"), 20, 0, 0, 0, 10, 700, 0, 0, 0, Map.of());

    @TempDir
    private Path folder = Path.of("");

    @Test
    void oneThreadAndTwoTellTheSame() throws IOException {
        assertThat(compare(rules(1), 1, 1, 12)).isEqualTo(compare(rules(1), 2, 1, 12));
    }

    @Test
    void slicesJoinedAreTheWhole() throws IOException {
        ComparedSprings whole = compare(rules(1), 2, 1, 12);

        assertThat(compare(rules(1), 2, 6, 12).join(compare(rules(1), 1, 1, 5))).isEqualTo(whole);
    }

    @Test
    void slicesWithASpringInCommonAreNotJoined() throws IOException {
        ComparedSprings slice = compare(rules(1), 1, 1, 3);

        assertThatThrownBy(() -> slice.join(slice))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("spring 1 is in both");
    }

    @Test
    void slicesLivedByOtherRulesAreNotJoined() throws IOException {
        ComparedSprings slice = compare(rules(1), 1, 1, 3);
        ComparedSprings other = compare(rules(2), 1, 4, 5);

        assertThatThrownBy(() -> slice.join(other)).hasMessage("they have different rules");
    }

    @Test
    void withTheWeatherKnownBeforehandNothingIsLaterThanAsLived() throws IOException {
        Foresight foresight =
                compare(rules(1), 2, 1, 3).variants().get(0).foresight().orElseThrow();

        assertThat(foresight.springs()).isEqualTo(2);
        assertThat(foresight.livedLateHaDays() + foresight.livedUnservedHa()).isPositive();
        assertThat(foresight.lateHaDays() + 5 * foresight.unservedHa())
                .isLessThanOrEqualTo(foresight.livedLateHaDays() + 5 * foresight.livedUnservedHa());
    }

    @Test
    void whatASpringCostsFollowsFromThePricesOfItsVariant() throws IOException {
        ComparedSprings compared = compare(rules(1), 1, 1, 3);

        assertThat(compared.variants().get(0).lived().yearlyCost()).hasValue(4_000);
        compared.variants().get(0).lived().springs().forEach(spring -> assertThat(spring.runningCost())
                .hasValue(20 * spring.workH() + 10 * spring.lateHaDays()));
    }

    /** A variant that is judged by money takes, of all plans there are, the one that costs least in the springs it is chosen by. */
    @Test
    void aVariantByMoneyCostsNoMoreInTheSpringsItIsChosenBy() throws IOException {
        ComparedSprings compared = byMoney(0);

        assertThat(meanCost(compared, 1)).isLessThanOrEqualTo(meanCost(compared, 0) + 1e-9);
        assertThat(compared.summaries().get(1).money()).isPresent();
    }

    @Test
    void springsAreReplannedByMoneyToo() throws IOException {
        assertThat(byMoney(2)).isEqualTo(byMoney(2));
        assertThat(meanCost(byMoney(2), 1)).isPositive();
    }

    private ComparedSprings byMoney(int replanDays) throws IOException {
        Season season = TwoFields.season(folder);
        Season byMoney = season.change()
                .goals(season.goals().withByMoney(Optional.of(PRICES)))
                .season();
        List<Integer> springs = List.of(101, 102, 103, 104);
        return new SpringComparison(
                        rules(1, replanDays), number -> RandomGround.of(season, 80, number), 2, SpringProgress.SILENT)
                .run(
                        List.of(
                                new Candidate("base", season, Optional.of(PRICES), "0".repeat(64)),
                                new Candidate("by money", byMoney, Optional.of(PRICES), "1".repeat(64))),
                        springs,
                        List.of(),
                        springs,
                        false);
    }

    private static double meanCost(ComparedSprings compared, int variant) {
        return compared.variants().get(variant).lived().springs().stream()
                .mapToDouble(spring -> spring.runningCost().orElseThrow())
                .average()
                .orElseThrow();
    }

    private ComparedSprings compare(LivingRules rules, int threads, int first, int last) throws IOException {
        Season season = TwoFields.season(folder);
        return new SpringComparison(
                        rules, number -> RandomGround.of(season, 80, number), threads, SpringProgress.SILENT)
                .run(
                        List.of(new Candidate("base", season, Optional.of(COSTS), "0".repeat(64))),
                        IntStream.rangeClosed(first, last).boxed().toList(),
                        List.of(1, 2),
                        List.of(101, 102),
                        true);
    }

    private static LivingRules rules(long seed) {
        return rules(seed, 0);
    }

    private static LivingRules rules(long seed, int replanDays) {
        return new LivingRules(
                "Two fields",
                "season.yaml",
                TwoFields.FIRST,
                TwoFields.FIRST.plusDays(4),
                DisplayUnits.METRIC,
                Optional.of("EUR"),
                "station.csv",
                30,
                seed,
                200,
                0,
                replanDays,
                false,
                false,
                Set.of(Work.PLANT));
    }
}
