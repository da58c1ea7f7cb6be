package freshfurrow.model.compare;

import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What reserves bring and cost: the longer one is, the fewer loads go stale, and the smaller loads are. The sum of both is money, where the season has
 * prices; else it is area-days: late ones, unplanted area by all days of the season, and the area that lost compost was for as one day late.
 *
 * @param points in the order in which the reserves were tried
 * @param isMoney whether sums are money, and not ha-days
 */
public record ReserveCurve(List<Point> points, boolean isMoney) {
    public ReserveCurve {
        points = List.copyOf(points);
    }

    /**
     * Means over all springs.
     *
     * @param sums of each spring, in their order
     */
    public record Point(
            int reserveS,
            double staleLoads,
            double dumpedKg,
            double unservedHa,
            double lateHaDays,
            double fills,
            List<Double> sums) {
        public Point {
            sums = List.copyOf(sums);
        }

        public double sum() {
            return sums.stream().mapToDouble(sum -> sum).average().orElse(0);
        }
    }

    /** Of the variants whose reserve was tried; empty when none was. */
    public static Optional<ReserveCurve> of(ComparedSprings compared) {
        boolean isMoney = compared.variants().stream()
                .filter(variant -> variant.reserve().isPresent())
                .flatMap(variant -> variant.lived().springs().stream())
                .map(SpringFigures::runningCost)
                .allMatch(OptionalDouble::isPresent);
        List<Point> points = compared.variants().stream()
                .flatMap(variant -> variant.reserve().stream()
                        .map(reserve -> point(reserve, variant.lived().springs(), compared.rules(), isMoney)))
                .toList();
        return points.isEmpty() ? Optional.empty() : Optional.of(new ReserveCurve(points, isMoney));
    }

    private static Point point(TriedReserve reserve, List<SpringFigures> springs, LivingRules rules, boolean isMoney) {
        long days = ChronoUnit.DAYS.between(rules.first(), rules.last()) + 1;
        ToDoubleFunction<SpringFigures> areaDays = spring ->
                spring.lateHaDays() + spring.unservedHa() * days + spring.dumpedKg() / reserve.compostKgPerHa();
        return new Point(
                reserve.reserveS(),
                mean(springs, SpringFigures::staleLoads),
                mean(springs, SpringFigures::dumpedKg),
                mean(springs, SpringFigures::unservedHa),
                mean(springs, SpringFigures::lateHaDays),
                mean(springs, SpringFigures::fills),
                springs.stream()
                        .map(spring -> isMoney ? spring.runningCost().orElse(0) : areaDays.applyAsDouble(spring))
                        .toList());
    }

    private static double mean(List<SpringFigures> springs, ToDoubleFunction<SpringFigures> figure) {
        return springs.stream().mapToDouble(figure).average().orElse(0);
    }

    /** Where the sum is least; the first of those alike. */
    public Point least() {
        return points.stream().min(Comparator.comparingDouble(Point::sum)).orElseThrow();
    }

    /** Those that the springs do not tell apart from the least. */
    public List<Point> asGood() {
        Point least = least();
        return points.stream()
                .filter(point -> !point.equals(least))
                .filter(point -> point.sums().size() < 2
                        || !PairedDifference.of(array(least.sums()), array(point.sums()))
                                .toldApart())
                .toList();
    }

    private static double[] array(List<Double> figures) {
        return figures.stream().mapToDouble(figure -> figure).toArray();
    }
}
