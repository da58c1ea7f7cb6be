package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** When the ground of each drainage class is wet, as it comes about: on each day of the season from a second of that day on. */
final class GroundDays {
    private static final int DRY = DAY_S;

    private final int days;
    private final Map<Drainage, int[]> wetFromS = new EnumMap<>(Drainage.class);

    GroundDays(Season season, GroundRecord ground) {
        days = season.days();
        for (Drainage drainage : Drainage.values()) {
            int[] fromS = new int[days];
            Arrays.fill(fromS, DRY);
            for (WetDay wet : ground.wetDays(drainage)) {
                long day = ChronoUnit.DAYS.between(season.first(), wet.date());
                if (day >= 0 && day < days) {
                    fromS[(int) day] = wet.fromS();
                }
            }
            wetFromS.put(drainage, fromS);
        }
    }

    int days() {
        return days;
    }

    /** The second of the day from which on it is wet; 86,400 when it is dry all day. */
    int wetFromS(Drainage drainage, int day) {
        return wetFromS.getOrDefault(drainage, new int[0])[day];
    }

    /** Whether it is wet at a time, s since the season's first midnight. */
    boolean wetAt(Drainage drainage, int t) {
        return t % DAY_S >= wetFromS(drainage, t / DAY_S);
    }

    /** Whether it is wet at the end of a day. */
    boolean wetAtEnd(Drainage drainage, int day) {
        return wetFromS(drainage, day) < DRY;
    }
}
