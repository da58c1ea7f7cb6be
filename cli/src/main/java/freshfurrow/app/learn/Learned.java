package freshfurrow.app.learn;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.log.LogOrder;
import freshfurrow.app.log.Logbook;
import freshfurrow.app.log.LoggedSeason;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.learn.Learning;
import freshfurrow.model.learn.Lesson;
import freshfurrow.model.learn.Lessons;
import freshfurrow.model.season.Season;
import java.util.List;
import java.util.Optional;

/**
 * What a season's log teaches.
 *
 * @param given the season's files
 * @param entries how many the log has
 */
public record Learned(GivenSeason given, Season season, int entries, Lessons lessons) {
    /**
     * Reads season and log.
     *
     * @throws Refused with every problem, when season or log cannot be used
     */
    public static Learned by(LogOrder order, SeasonClock clock) {
        LoggedSeason logged = new Logbook(order, clock).list();
        return new Learned(
                order.season(),
                logged.season(),
                logged.log().entries().size(),
                Learning.of(logged.season(), logged.log()));
    }

    /** What the season file would say of it; empty when it does not differ, or no value of the season file's key can say it. */
    public Optional<LearnedValue> value(Lesson lesson) {
        return new LearnedValues(season).of(lesson);
    }

    /** All that the season file would say. */
    public List<LearnedValue> values() {
        LearnedValues values = new LearnedValues(season);
        return lessons.lessons().stream()
                .flatMap(lesson -> values.of(lesson).stream())
                .toList();
    }
}
