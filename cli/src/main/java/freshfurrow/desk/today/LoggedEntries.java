package freshfurrow.desk.today;

import com.fasterxml.jackson.databind.node.ArrayNode;
import freshfurrow.app.log.DayOfWork;
import freshfurrow.cli.text.LogReport;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;

/** What the log has of a day. */
final class LoggedEntries {
    private LoggedEntries() {}

    static void write(ArrayNode list, DayOfWork work, LocalDate day) {
        Set<Integer> standing =
                work.log().standing().stream().map(Entry::number).collect(Collectors.toSet());
        work.log().entries().stream()
                .filter(entry -> entry.at().toLocalDate().equals(day))
                .forEach(entry -> list.addObject()
                        .put("entry", entry.number())
                        .put("text", LogReport.line(work.season(), entry))
                        .put("mayVoid", standing.contains(entry.number()) && !(entry.fact() instanceof Fact.Voided)));
    }
}
