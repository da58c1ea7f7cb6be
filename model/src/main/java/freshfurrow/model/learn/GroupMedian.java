package freshfurrow.model.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The median that groups of observations have in common, with its 95 % interval. A machine's day is common to all that it does that day, so
 * it is groups that count: each by the median of its observations. The interval is that between order statistics of the groups, by the
 * binomial distribution: W. J. Conover, Practical Nonparametric Statistics, 3rd edition 1999, section 3.2; M. Hollander, D. A. Wolfe and E.
 * Chicken, Nonparametric Statistical Methods, 3rd edition 2014, section 3.6 (both sections from memory). It asks for no distribution, and
 * groups need not be alike but in their median, so that some may be of more observations than others. Where only bounds are known, its lower
 * end is that of the lower bounds and its upper end that of the upper ones, which can only make it wider.
 *
 * @param medianLow the median is not below this
 * @param medianHigh nor above this
 * @param low lower end of the interval
 * @param high its upper end
 */
record GroupMedian(double medianLow, double medianHigh, double low, double high) {
    /** At most this of the time is a true median outside of its interval. */
    private static final double OUTSIDE = 0.05;

    /** Empty when there are too few groups. */
    static Optional<GroupMedian> of(List<Observation> observations) {
        double[] lows = byGroup(observations, Observation::low);
        double[] highs = byGroup(observations, Observation::high);
        int rank = rank(lows.length);
        return rank == 0
                ? Optional.empty()
                : Optional.of(new GroupMedian(
                        Medians.ofSorted(lows), Medians.ofSorted(highs), lows[rank - 1], highs[highs.length - rank]));
    }

    /** How many groups there are. */
    static int groups(List<Observation> observations) {
        return (int) observations.stream().map(Observation::group).distinct().count();
    }

    /**
     * The largest r for which the median lies between the r-th smallest and the r-th largest of n with a chance of 95 % or more; 0 when there
     * is none, as for n below 6.
     */
    static int rank(int n) {
        double logChance = -n * Math.log(2);
        double below = 0;
        int rank = 0;
        while (2 * rank < n) {
            below += Math.exp(logChance);
            if (2 * below > OUTSIDE) {
                return rank;
            }
            rank++;
            logChance += Math.log((n - rank + 1.0) / rank);
        }
        return rank;
    }

    /** Each group's median, sorted. */
    private static double[] byGroup(List<Observation> observations, ToDoubleFunction<Observation> figure) {
        Map<Object, List<Double>> byGroup = new LinkedHashMap<>();
        observations.forEach(one ->
                byGroup.computeIfAbsent(one.group(), group -> new ArrayList<>()).add(figure.applyAsDouble(one)));
        return byGroup.values().stream()
                .mapToDouble(figures -> Medians.of(
                        figures.stream().mapToDouble(Double::doubleValue).toArray()))
                .sorted()
                .toArray();
    }
}
