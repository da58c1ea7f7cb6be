package freshfurrow.model.season;

import java.util.Optional;

/**
 * How much times vary around those that the season gives, which are their means. Spreads are coefficients of variation: standard deviation by
 * mean.
 *
 * @param batch of the time of a batch, 0 to 1
 * @param transfer of the time of a transfer, its setup included, 0 to 1
 * @param drive of the time of a drive, 0 to 1
 * @param planting of the time to plant or spray an area, 0 to 1
 * @param breakdowns of each machine; empty where none break down
 */
public record TimeSpread(
        double batch, double transfer, double drive, double planting, Optional<Breakdowns> breakdowns) {
    /** Ours, no source. */
    public static final TimeSpread USUAL = new TimeSpread(0.15, 0.1, 0.15, 0.1, Optional.of(Breakdowns.USUAL));

    /** A day on which a machine is fast, or slow, from morning to night has half of the variance; each piece of work has the rest. Ours, no source. */
    public static final double DAYS_SHARE = 0.5;

    public TimeSpread {
        if (!(isShare(batch) && isShare(transfer) && isShare(drive) && isShare(planting))) {
            throw new IllegalArgumentException("spreads are 0 to 1");
        }
    }

    private static boolean isShare(double spread) {
        return spread >= 0 && spread <= 1;
    }

    /** Whether all takes the time that the season gives it. */
    public boolean isNone() {
        return batch == 0 && transfer == 0 && drive == 0 && planting == 0 && breakdowns.isEmpty();
    }

    /**
     * When a machine breaks down, at random: with every hour of its work as likely as with any other.
     *
     * @param betweenS mean of its working time from one breakdown to the next, above 0, s
     * @param downS mean time until it works again, by the clock, above 0, s
     */
    public record Breakdowns(double betweenS, double downS) {
        /** Ours, no source: 80 h and 1.5 h. */
        public static final Breakdowns USUAL = new Breakdowns(80 * 3600, 1.5 * 3600);

        public Breakdowns {
            if (!(betweenS > 0 && downS > 0)) {
                throw new IllegalArgumentException("times between breakdowns and down are above 0");
            }
        }
    }
}
