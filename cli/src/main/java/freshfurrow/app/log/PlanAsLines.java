package freshfurrow.app.log;

import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.log.Column;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.AsPlanned;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.Season;
import freshfurrow.model.write.LineOfFact;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What a plan says was done, as lines for the log. */
final class PlanAsLines {
    private PlanAsLines() {}

    /**
     * The lines that the log lacks, by time.
     *
     * @throws Refused when it is not yet so late, or the season has nothing of a name that is left out
     */
    static List<Map<Column, String>> of(
            LogContext context, SeasonLog log, Plan plan, LocalDateTime until, List<String> except) {
        if (until.isAfter(context.latest())) {
            throw new Refused(new LogRefusal.NotYet(until, context.latest()));
        }
        Season season = context.season();
        LineOfFact line = new LineOfFact(season.units());
        return AsPlanned.facts(season, plan, log, until, leftOut(season, except)).stream()
                .map(done -> line.cells(done.at(), done.fact()))
                .toList();
    }

    private static Set<String> leftOut(Season season, List<String> except) {
        List<String> known = Stream.concat(
                        season.machines().map(Machine::id),
                        season.fields().stream().map(Field::id))
                .toList();
        except.stream().filter(id -> !known.contains(id)).findFirst().ifPresent(id -> {
            throw new Refused(new LogRefusal.UnknownException(id, known));
        });
        return new HashSet<>(except);
    }
}
