package freshfurrow.model.timeline.calendar;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/** When the ground of fields is too wet, by rain, by a weather record, and by what people said of it; in seconds since the first midnight. */
final class Closures {
    /** Whole days closed are rounded up; this much less than a whole day more is taken for rounding of units. */
    private static final double WHOLE_DAY_TOLERANCE = 1e-9;

    /** Before any time of a season. */
    private static final long LONG_AGO = Integer.MIN_VALUE;

    private final Season season;
    private final long horizonS;

    Closures(Season season) {
        this.season = season;
        horizonS = (long) season.days() * DAY_S;
    }

    /** A time that is closed because of rain that began at {@code sinceS}. */
    private record Closure(long fromS, long toS, long sinceS) {}

    /** Times within the season at which a field of such ground is too wet, joined, in order. */
    List<int[]> of(FieldGround ground) {
        List<Closure> byWeather = byWeather(ground.drainage());
        List<int[]> closed = new ArrayList<>();
        long knownS = LONG_AGO;
        long fromS = 0;
        for (Judgement judgement : ground.judged()) {
            long saidS = season.time().seconds(judgement.said());
            addSince(closed, byWeather, knownS, fromS, saidS);
            knownS = saidS;
            fromS = saidS;
        }
        addSince(closed, byWeather, knownS, fromS, horizonS);
        addUnfit(closed, ground.judged());
        return Calendar.joined(closed);
    }

    /** From one moment to another, what is closed because of rain that began after {@code knownS}. */
    private void addSince(List<int[]> closed, List<Closure> byWeather, long knownS, long fromS, long toS) {
        byWeather.stream()
                .filter(closure -> closure.sinceS() > knownS)
                .forEach(closure -> add(closed, Math.max(fromS, closure.fromS()), Math.min(toS, closure.toS())));
    }

    /** What somebody said holds until somebody says otherwise. */
    private void addUnfit(List<int[]> closed, List<Judgement> judged) {
        for (int i = 0; i < judged.size(); i++) {
            long toS = season.time().seconds(judged.get(i).fitFrom());
            long nextS = i + 1 < judged.size()
                    ? season.time().seconds(judged.get(i + 1).said())
                    : horizonS;
            add(closed, season.time().seconds(judged.get(i).said()), Math.min(toS, nextS));
        }
    }

    private void add(List<int[]> closed, long fromS, long toS) {
        if (toS > Math.max(0, fromS) && fromS < horizonS) {
            closed.add(new int[] {(int) Math.max(0, fromS), (int) Math.min(horizonS, toS)});
        }
    }

    private List<Closure> byWeather(Drainage drainage) {
        List<Closure> closures = new ArrayList<>();
        for (Rain rain : season.rain()) {
            if (rain.mm() < season.drying().ignoreBelowMm()) {
                continue;
            }
            long day = ChronoUnit.DAYS.between(season.first(), rain.date());
            double days = Math.ceil(rain.mm() * season.drying().daysPerMm(drainage) - WHOLE_DAY_TOLERANCE);
            long from = day * DAY_S + rain.fromS();
            closures.add(new Closure(from, (day + (long) days) * DAY_S, from));
        }
        season.ground().ifPresent(ground -> {
            NavigableSet<LocalDate> rained = new TreeSet<>();
            ground.rainMm().forEach((date, mm) -> {
                if (mm >= season.drying().ignoreBelowMm()) {
                    rained.add(date);
                }
            });
            ground.wetDays(drainage).forEach(wet -> {
                long midnight = season.time().midnight(wet.date());
                LocalDate since = rained.floor(wet.date());
                closures.add(new Closure(
                        midnight + wet.fromS(),
                        midnight + DAY_S,
                        since == null ? LONG_AGO + 1 : season.time().midnight(since)));
            });
        });
        return closures;
    }
}
