package freshfurrow.model.season;

import freshfurrow.model.season.TimeSpread.Breakdowns;
import java.util.Optional;
import java.util.Random;

/** Times that vary from hardly at all to by 40 %, half of them with machines that break down. */
public final class RandomSpreads {
    private static final double MOST = 0.4;

    private RandomSpreads() {}

    public static TimeSpread spread(long seed) {
        Random random = new Random(seed);
        return new TimeSpread(
                MOST * random.nextDouble(),
                MOST * random.nextDouble(),
                MOST * random.nextDouble(),
                MOST * random.nextDouble(),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new Breakdowns(
                                3_600 * (2 + 40 * random.nextDouble()), 60 + 36_000 * random.nextDouble())));
    }
}
