package freshfurrow.model.supply;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is to be there, and when, so that it is enough in a share of the springs.
 *
 * @param days one entry a day of the season
 * @param lots in the order in which they come
 * @param points in the season's order
 * @param usedKg compost used by the end of the season with the lots as they are, kg
 * @param stockOut the first day on which the lots as they are do not hold what is needed, with what lacks then, kg
 */
public record SupplyNeeds(
        List<Day> days, List<Lot> lots, List<Point> points, double usedKg, Optional<StockOut> stockOut) {
    private static final double LEAST_KG = 0.01;

    public SupplyNeeds {
        days = List.copyOf(days);
        lots = List.copyOf(lots);
        points = List.copyOf(points);
    }

    /**
     * A day.
     *
     * @param neededKg compost used from the season's first day to the end of this one, kg
     * @param stockKg compost of the lots that are there by this day, kg
     * @param waterL drawn on this day, by water point in the season's order, L
     */
    public record Day(LocalDate date, double neededKg, double stockKg, List<Double> waterL) {
        public Day {
            waterL = List.copyOf(waterL);
        }
    }

    /**
     * A lot.
     *
     * @param neededBy the first day on which the lots before it are not enough; empty when they are all season long
     * @param neededKg what is taken from it by the end of the season, kg
     */
    public record Lot(CompostLot lot, Optional<LocalDate> neededBy, double neededKg) {}

    /**
     * A water point.
     *
     * @param mostL drawn on its heaviest day, L
     * @param limitL a day, where there is a limit, L
     * @param springsAtLimit springs in which a day comes within a hundredth of the limit
     */
    public record Point(String id, double mostL, OptionalDouble limitL, int springsAtLimit) {}

    /** A day on which compost lacks. */
    public record StockOut(LocalDate date, double lackKg) {}

    /**
     * The needs of a season.
     *
     * @param unlimited what the springs use where compost is no limit and nothing goes without extract
     * @param asItIs what they use with the lots as they are
     */
    public static SupplyNeeds of(Season season, List<SpringUse> unlimited, List<SpringUse> asItIs, SureShare sure) {
        double[] needed = neededByDay(season, unlimited, sure);
        List<CompostLot> lots = season.compost().stream()
                .sorted(Comparator.comparing(CompostLot::from))
                .toList();
        List<Day> days = new ArrayList<>();
        Optional<StockOut> stockOut = Optional.empty();
        for (int day = 0; day < needed.length; day++) {
            LocalDate date = season.first().plusDays(day);
            double stock = lots.stream()
                    .filter(lot -> !lot.from().isAfter(date))
                    .mapToDouble(CompostLot::massKg)
                    .sum();
            days.add(new Day(date, needed[day], stock, waterOn(day, season, asItIs, sure)));
            if (stockOut.isEmpty() && needed[day] > stock + LEAST_KG) {
                stockOut = Optional.of(new StockOut(date, needed[day] - stock));
            }
        }
        double[] used = neededByDay(season, asItIs, sure);
        return new SupplyNeeds(
                days, lots(season, lots, needed), points(season, asItIs, sure), used[used.length - 1], stockOut);
    }

    /** Compost that is needed by the end of the season, kg. */
    public double neededKg() {
        return days.get(days.size() - 1).neededKg();
    }

    /** Compost of all lots, kg. */
    public double stockKg() {
        return lots.stream().mapToDouble(lot -> lot.lot().massKg()).sum();
    }

    private static double[] neededByDay(Season season, List<SpringUse> springs, SureShare sure) {
        double[][] used = new double[season.days()][springs.size()];
        for (int i = 0; i < springs.size(); i++) {
            double sum = 0;
            for (int day = 0; day < used.length; day++) {
                sum += springs.get(i).compostKg(day);
                used[day][i] = sum;
            }
        }
        double[] needed = new double[used.length];
        for (int day = 0; day < used.length; day++) {
            needed[day] = sure.enough(used[day]);
        }
        return needed;
    }

    private static List<Double> waterOn(int day, Season season, List<SpringUse> springs, SureShare sure) {
        List<Double> water = new ArrayList<>();
        for (int point = 0; point < season.waterPoints().size(); point++) {
            double[] drawn = new double[springs.size()];
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] = springs.get(i).waterL(point, day);
            }
            water.add(sure.enough(drawn));
        }
        return water;
    }

    private static List<Lot> lots(Season season, List<CompostLot> lots, double[] needed) {
        List<Lot> needs = new ArrayList<>();
        double before = 0;
        for (CompostLot lot : lots) {
            Optional<LocalDate> by = Optional.empty();
            for (int day = 0; day < needed.length && by.isEmpty(); day++) {
                if (needed[day] > before + LEAST_KG) {
                    by = Optional.of(season.first().plusDays(day));
                }
            }
            double all = needed[needed.length - 1];
            needs.add(new Lot(lot, by, Math.max(0, Math.min(lot.massKg(), all - before))));
            before += lot.massKg();
        }
        return needs;
    }

    private static List<Point> points(Season season, List<SpringUse> springs, SureShare sure) {
        List<Point> points = new ArrayList<>();
        for (int p = 0; p < season.waterPoints().size(); p++) {
            WaterPoint point = season.waterPoints().get(p);
            double[] most = new double[springs.size()];
            int atLimit = 0;
            for (int i = 0; i < most.length; i++) {
                for (int day = 0; day < season.days(); day++) {
                    most[i] = Math.max(most[i], springs.get(i).waterL(p, day));
                }
                atLimit += most[i] >= 0.99 * point.dailyLimitL().orElse(Double.POSITIVE_INFINITY) ? 1 : 0;
            }
            points.add(new Point(point.id(), sure.enough(most), point.dailyLimitL(), atLimit));
        }
        return points;
    }
}
