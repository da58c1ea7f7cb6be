package freshfurrow.cli.card;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.cli.text.Figures;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Moments after the first batch begins: times of day where the start is known, lengths of time else. */
record DrumClock(Optional<LocalTime> start) {
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    String at(int seconds) {
        if (start.isEmpty()) {
            return seconds == 0 ? "start" : "+ " + Figures.toTheSecond(seconds);
        }
        int later = (start.get().toSecondOfDay() + seconds) / DAY_S;
        LocalTime time = start.get().plusSeconds(seconds);
        String clock = (time.getSecond() == 0 ? MINUTES : SECONDS).format(time);
        return later == 0 ? clock : clock + (later == 1 ? " next day" : " " + later + " days later");
    }
}
