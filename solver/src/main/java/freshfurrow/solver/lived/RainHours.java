package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.HOUR_S;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.WetDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Hours for a record of days, which has none: on the first day of a wet time the rain begins at an hour that is drawn evenly from the
 * day, the same for all drainage classes; the days after are wet from midnight on. The draw depends on seed, spring and date alone, so
 * that all variants live through the same hours.
 */
public final class RainHours {
    private final long seed;

    public RainHours(long seed) {
        this.seed = seed;
    }

    /**
     * The ground with an hour for the beginning of each wet time. A season that begins wet is wet from its first midnight.
     *
     * @param spring number of the spring
     * @param first first day of the season
     */
    public GroundRecord in(GroundRecord ground, int spring, LocalDate first) {
        Map<Drainage, List<WetDay>> wet = new EnumMap<>(Drainage.class);
        for (Drainage drainage : Drainage.values()) {
            List<WetDay> days = new ArrayList<>();
            LocalDate wetUntil = first;
            for (WetDay day : ground.wetDays(drainage)) {
                boolean goesOn = !day.date().isAfter(wetUntil);
                days.add(goesOn ? day : day.withFromS(fromS(spring, day.date())));
                wetUntil = day.date().plusDays(1);
            }
            wet.put(drainage, days);
        }
        return ground.withWet(wet);
    }

    private int fromS(int spring, LocalDate date) {
        SplittableRandom random = new SplittableRandom(seed * 31 + spring).split();
        long day = random.nextLong() ^ date.toEpochDay();
        return new SplittableRandom(day).nextInt(DAY_S / HOUR_S) * HOUR_S;
    }
}
