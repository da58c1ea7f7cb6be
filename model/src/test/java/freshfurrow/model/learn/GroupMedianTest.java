package freshfurrow.model.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroupMedianTest {
    /**
     * A table of confidence intervals for the population median in a textbook of statistics, 'Table A.7: Confidence Intervals for the Population
     * Median', page 656 (coursehero.com/file/5646626/A7): of those with 95 % or more the narrowest, as 'n 17, [x(5), x(13)], 95.1 %'.
     */
    @ParameterizedTest
    @CsvSource({
        "6, 1, 96.9",
        "7, 1, 98.4",
        "8, 1, 99.2",
        "9, 2, 96.1",
        "10, 2, 97.9",
        "11, 2, 98.8",
        "12, 3, 96.1",
        "13, 3, 97.8",
        "14, 3, 98.7",
        "15, 4, 96.5",
        "16, 4, 97.9",
        "17, 5, 95.1",
        "18, 5, 96.9",
        "19, 5, 98.1",
        "20, 6, 95.9"
    })
    void the_ranks_are_those_of_a_published_table(int n, int rank, double percent) {
        assertThat(GroupMedian.rank(n)).isEqualTo(rank);
        assertThat(chanceBetween(n, rank) * 100).isCloseTo(percent, within(0.051));
        assertThat(chanceBetween(n, rank + 1)).isLessThan(0.95);
    }

    /** The same table: 2 to 5 have [x(1), x(n)] with 50 to 93.8 %. */
    @ParameterizedTest
    @CsvSource({"0", "1", "2", "3", "4", "5"})
    void five_are_too_few(int n) {
        assertThat(GroupMedian.rank(n)).isZero();
    }

    /** By the normal distribution the rank is n / 2 - 0.98 sqrt(n), about: 4,902 of 10,000. */
    @Test
    void thousands_are_no_harder() {
        assertThat(GroupMedian.rank(10_000)).isBetween(4_900, 4_903);
    }

    /** Sorted 2 3 5 7 8 11 13 20 31: the fifth is the median, and of nine the second and the eighth are the ends. */
    @Test
    void nine_figures_have_the_fifth_as_median_between_the_second_and_the_eighth() {
        GroupMedian median =
                GroupMedian.of(single(13, 2, 8, 31, 5, 3, 20, 7, 11)).orElseThrow();

        assertThat(median).isEqualTo(new GroupMedian(8, 8, 3, 20));
    }

    /** Sorted 1 2 3 4 6 9: halfway between 3 and 4; of six the first and the last. */
    @Test
    void an_even_number_has_its_median_halfway_between_the_two_in_the_middle() {
        assertThat(GroupMedian.of(single(9, 4, 1, 6, 3, 2))).contains(new GroupMedian(3.5, 3.5, 1, 9));
    }

    /** Six groups with 1, 2 .. 6; a hundred more observations in the group with 6 are still one group. */
    @Test
    void a_group_counts_once_however_many_are_in_it() {
        List<Observation> seen = new ArrayList<>(single(1, 2, 3, 4, 5, 6));
        for (int i = 0; i < 100; i++) {
            seen.add(Observation.exact(5, 6));
        }

        assertThat(GroupMedian.of(seen)).contains(new GroupMedian(3.5, 3.5, 1, 6));
        assertThat(GroupMedian.groups(seen)).isEqualTo(6);
    }

    /** The third group has 3, 30 and 4: its median is 4, whatever the slip of the pen. */
    @Test
    void a_slip_of_the_pen_in_a_group_does_little_harm() {
        List<Observation> seen = new ArrayList<>(single(1, 2, 3, 4, 5, 6));
        seen.add(Observation.exact(2, 30));
        seen.add(Observation.exact(2, 4));

        assertThat(GroupMedian.of(seen)).contains(new GroupMedian(4, 4, 1, 6));
    }

    /** Lower bounds 0 1 1 2 2 3, upper bounds 2 3 4 4 5 and none: medians 1.5 and 4, from the least lower one to the largest upper one. */
    @Test
    void where_only_bounds_are_known_the_interval_goes_from_lower_to_upper_ones() {
        List<Observation> seen = List.of(
                new Observation("a", 0, 2),
                new Observation("b", 1, 3),
                new Observation("c", 1, 4),
                new Observation("d", 2, 4),
                new Observation("e", 2, 5),
                new Observation("f", 3, Double.POSITIVE_INFINITY));

        assertThat(GroupMedian.of(seen)).contains(new GroupMedian(1.5, 4, 0, Double.POSITIVE_INFINITY));
    }

    private static List<Observation> single(double... figures) {
        List<Observation> seen = new ArrayList<>();
        for (int i = 0; i < figures.length; i++) {
            seen.add(Observation.exact(i, figures[i]));
        }
        return seen;
    }

    /** Of n fair coins, the chance of more than r - 1 heads and more than r - 1 tails, counted out. */
    private static double chanceBetween(int n, int rank) {
        double outside = 0;
        for (int heads = 0; heads < rank; heads++) {
            double ways = 1;
            for (int i = 1; i <= heads; i++) {
                ways = ways * (n - heads + i) / i;
            }
            outside += 2 * ways / Math.pow(2, n);
        }
        return 1 - outside;
    }
}
