package freshfurrow.app.planning;

import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** From when on to plan, and where that comes from. */
public record PlanningMoment(LocalDateTime now, Source source) {
    /** Who says what time it is. */
    public enum Source {
        /** Whoever asks for a plan. */
        SAID,
        CLOCK,
        /** The latest of what is told of the season, where the clock is not in it. */
        TOLD
    }

    /**
     * What is said, else the clock if it is in the season, else the latest of what is told.
     *
     * @throws Refused when nothing tells it, or it is not in the season
     */
    static PlanningMoment of(Optional<LocalDateTime> said, Season season, SeasonLog log, News news, SeasonClock clock) {
        PlanningMoment moment = said.map(now -> new PlanningMoment(now, Source.SAID))
                .or(() -> clock.inSeason(season).map(now -> new PlanningMoment(now, Source.CLOCK)))
                .or(() -> latest(log, news)
                        .map(now -> now.equals(season.end()) ? now.minusSeconds(1) : now)
                        .map(now -> new PlanningMoment(now, Source.TOLD)))
                .orElseThrow(() -> new Refused(new PlanningRefusal.NoTime(season.first(), season.last())));
        if (!SeasonClock.isIn(season, moment.now())) {
            throw new Refused(new PlanningRefusal.OutOfSeason(moment.now(), season.first(), season.last()));
        }
        return moment;
    }

    private static Optional<LocalDateTime> latest(SeasonLog log, News news) {
        return Stream.of(
                        log.standing().stream().map(Entry::at),
                        news.rain().stream().map(Rain::start),
                        news.outages().stream().map(Outage::from))
                .flatMap(times -> times)
                .max(Comparator.naturalOrder());
    }
}
