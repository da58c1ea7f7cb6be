package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What is known of the ground at a time: how it is now, and how a forecast says it will be. After that it is taken to stay as it is
 * at the forecast's end: dry ground dry, as nobody puts off work for a rain that nobody knows of, and wet ground wet, as nobody mixes
 * for a field that may not be fit.
 */
final class KnownGround {
    private final Season season;
    private final GroundDays ground;
    private final int forecastDays;

    /** @param forecastDays days that are known ahead, today among them; 0 to know only what is */
    KnownGround(Season season, GroundDays ground, int forecastDays) {
        this.season = season;
        this.ground = ground;
        this.forecastDays = forecastDays;
    }

    /** Whether a field of that class is fit to be planted at a time. */
    boolean dryAt(Drainage drainage, int t) {
        return !ground.wetAt(drainage, t);
    }

    /** As a record for a season that goes on at {@code now}; of the time before it says nothing. */
    GroundRecord at(int now) {
        Map<Drainage, List<WetDay>> wet = new EnumMap<>(Drainage.class);
        for (Drainage drainage : Drainage.values()) {
            List<WetDay> days = new ArrayList<>();
            for (int day = now / DAY_S; day < ground.days(); day++) {
                int fromS = knownWetFromS(drainage, now, day);
                if (fromS < DAY_S) {
                    days.add(new WetDay(season.first().plusDays(day), fromS, 0, 0, 0));
                }
            }
            wet.put(drainage, days);
        }
        return new GroundRecord("as known", Map.of(), wet);
    }

    /** The first time at or after {@code from} at which ground of that class is known to be dry; the season's end when none is. */
    int knownDryFrom(Drainage drainage, int now, int from) {
        int t = from;
        for (int day = from / DAY_S; day < ground.days(); day++) {
            if (t % DAY_S < knownWetFromS(drainage, now, day)) {
                return t;
            }
            t = (day + 1) * DAY_S;
        }
        return ground.days() * DAY_S;
    }

    /** The next time after {@code now} at which ground becomes wet or dry, or a forecast brings something new; the season's end when none does. */
    int nextNews(int now) {
        for (int day = now / DAY_S; day < ground.days(); day++) {
            int midnight = day * DAY_S;
            if (midnight > now && (opens(day) || forecastChanges(day))) {
                return midnight;
            }
            int rain = rainIn(day, now);
            if (rain < DAY_S) {
                return midnight + rain;
            }
        }
        return ground.days() * DAY_S;
    }

    private int knownWetFromS(Drainage drainage, int now, int day) {
        int today = now / DAY_S;
        if (forecastDays == 0) {
            return ground.wetAt(drainage, now) ? 0 : DAY_S;
        }
        int end = Math.min(today + forecastDays, ground.days()) - 1;
        if (day <= end) {
            return ground.wetFromS(drainage, day);
        }
        return ground.wetAtEnd(drainage, end) ? 0 : DAY_S;
    }

    /** Whether ground that was wet at the end of the day before is not at midnight, or the other way round. */
    private boolean opens(int day) {
        for (Drainage drainage : Drainage.values()) {
            if (ground.wetAtEnd(drainage, day - 1) != ground.wetAt(drainage, day * DAY_S)) {
                return true;
            }
        }
        return false;
    }

    private boolean forecastChanges(int day) {
        int last = day + forecastDays - 1;
        if (forecastDays == 0 || last >= ground.days()) {
            return false;
        }
        for (Drainage drainage : Drainage.values()) {
            if (knownWetFromS(drainage, day * DAY_S - 1, last) != ground.wetFromS(drainage, last)) {
                return true;
            }
        }
        return false;
    }

    /** The first second of a day, later than {@code now}, at which ground becomes wet; 86,400 when none does. */
    private int rainIn(int day, int now) {
        int first = DAY_S;
        for (Drainage drainage : Drainage.values()) {
            int fromS = ground.wetFromS(drainage, day);
            if (fromS > 0 && day * DAY_S + fromS > now) {
                first = Math.min(first, fromS);
            }
        }
        return first;
    }
}
