package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.audit.WorkCalendar.Period;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.SeasonTime;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The times at which ground is closed by rain, by wet days of a record and by what people said of it, in seconds since the first midnight. */
final class WetPeriods {
    /** A product such as 0.2 in x 5 d/in must not become a day longer by a rounding error. */
    private static final double WHOLE_DAY_SLACK = 1e-9;

    /** @param began when the rain began that is the cause; empty when the record does not have it */
    private record Wet(Period period, Optional<Long> began) {}

    private final Season season;
    private final SeasonTime time;

    WetPeriods(Season season) {
        this.season = season;
        time = season.time();
    }

    List<Period> of(FieldGround ground) {
        List<Wet> weather = new ArrayList<>();
        rains(ground.drainage(), weather);
        wetDays(ground.drainage(), weather);
        if (ground.judged().isEmpty()) {
            return weather.stream().map(Wet::period).toList();
        }
        return betweenChanges(weather, ground.judged()).stream()
                .filter(period -> isClosed(period.start(), weather, ground.judged()))
                .toList();
    }

    /** Times in each of which the ground is open or closed throughout. */
    private List<Period> betweenChanges(List<Wet> weather, List<Judgement> judged) {
        TreeSet<Long> changes = new TreeSet<>(List.of(0L, (long) season.days() * DAY_S));
        weather.forEach(wet -> {
            changes.add(wet.period().start());
            changes.add(wet.period().end());
        });
        judged.forEach(judgement -> {
            changes.add(time.seconds(judgement.said()));
            changes.add(time.seconds(judgement.fitFrom()));
        });
        List<Period> periods = new ArrayList<>();
        for (Long start = changes.first(); changes.higher(start) != null; start = changes.higher(start)) {
            periods.add(new Period(start, changes.higher(start)));
        }
        return periods;
    }

    /** By the newest word, which stands over rain that had begun when it was said; and by rain that began after it. */
    private boolean isClosed(long at, List<Wet> weather, List<Judgement> judged) {
        Optional<Judgement> newest = judged.stream()
                .filter(judgement -> time.seconds(judgement.said()) <= at)
                .reduce((before, after) -> after);
        boolean saidUnfit = newest.filter(judgement -> at < time.seconds(judgement.fitFrom()))
                .isPresent();
        return saidUnfit
                || weather.stream()
                        .filter(wet ->
                                wet.period().start() <= at && at < wet.period().end())
                        .anyMatch(wet -> newest.isEmpty()
                                || wet.began()
                                        .filter(began -> began
                                                > time.seconds(newest.get().said()))
                                        .isPresent());
    }

    private void rains(Drainage drainage, List<Wet> all) {
        for (Rain rain : season.rain()) {
            if (rain.mm() < season.drying().ignoreBelowMm()) {
                continue;
            }
            long midnight = time.midnight(rain.date());
            double days = Math.ceil(rain.mm() * season.drying().daysPerMm(drainage) - WHOLE_DAY_SLACK);
            long daysInReach = (long) Math.min(days, ChronoUnit.DAYS.between(rain.date(), season.last()) + 1.0);
            long began = midnight + rain.fromS();
            all.add(new Wet(new Period(began, midnight + daysInReach * DAY_S), Optional.of(began)));
        }
    }

    private void wetDays(Drainage drainage, List<Wet> all) {
        season.ground().ifPresent(ground -> ground.wetDays(drainage).forEach(wet -> {
            Optional<LocalDate> rained = ground.rainMm().entrySet().stream()
                    .filter(rain -> rain.getValue() >= season.drying().ignoreBelowMm())
                    .map(rain -> rain.getKey())
                    .filter(date -> !date.isAfter(wet.date()))
                    .max(LocalDate::compareTo);
            all.add(new Wet(
                    new Period(
                            time.midnight(wet.date()) + wet.fromS(),
                            time.midnight(wet.date().plusDays(1))),
                    rained.map(time::midnight)));
        }));
    }
}
