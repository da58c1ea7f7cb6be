package freshfurrow.app.planning;

import freshfurrow.app.input.SeasonClock;
import freshfurrow.cli.command.Refusal;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * From when on to plan.
 *
 * @param source where that comes from, in a clause
 */
public record PlanningMoment(LocalDateTime now, String source) {
    /**
     * What is said, else the clock if it is in the season, else the latest of what is told.
     *
     * @throws Refusal when nothing tells it, or it is not in the season
     */
    public static PlanningMoment of(
            Optional<LocalDateTime> said, Season season, SeasonLog log, News news, SeasonClock clock) {
        PlanningMoment moment = said.map(now -> new PlanningMoment(now, "time given"))
                .or(() -> clock.inSeason(season).map(now -> new PlanningMoment(now, "the time now")))
                .or(() -> latest(log, news)
                        .map(now -> now.equals(season.end()) ? now.minusSeconds(1) : now)
                        .map(now -> new PlanningMoment(
                                now, "time of the latest event given, because today is outside the season")))
                .orElseThrow(() -> new Refusal("Today is outside the season (" + season.first() + " to " + season.last()
                        + "); give the time with --now, like --now 2027-05-03T14:00"));
        if (!SeasonClock.isIn(season, moment.now())) {
            throw new Refusal(moment.now() + " is outside the season (" + season.first() + " to " + season.last()
                    + "); give another time with --now");
        }
        return moment;
    }

    private static Optional<LocalDateTime> latest(SeasonLog log, News news) {
        return Stream.of(
                        log.standing().stream().map(Entry::at),
                        news.rain().stream()
                                .map(rain -> rain.date().atStartOfDay().plusSeconds(rain.fromS())),
                        news.outages().stream().map(Outage::from))
                .flatMap(times -> times)
                .max(Comparator.naturalOrder());
    }
}
