package freshfurrow.model.read;

import static freshfurrow.model.log.Column.ENTRY;
import static freshfurrow.model.log.Column.VOIDS;

import freshfurrow.model.log.Fact;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The numbers of a log's entries: each once, and what takes one back names an earlier one that still holds. */
final class LogNumbers {
    private final Map<Integer, LoggedLine> byNumber = new HashMap<>();
    private final Map<Integer, Integer> voidedBy = new HashMap<>();

    void check(List<LoggedLine> lines) {
        int next =
                1 + lines.stream().mapToInt(one -> one.entry().number()).max().orElse(0);
        for (LoggedLine line : lines) {
            int number = line.entry().number();
            if (byNumber.putIfAbsent(number, line) != null) {
                line.cells().problem(ENTRY, "another entry has the number " + number, "number this one " + next);
            }
        }
        for (LoggedLine line : lines) {
            if (line.entry().fact() instanceof Fact.Voided voided) {
                checkVoid(line, voided.entry());
            }
        }
    }

    private void checkVoid(LoggedLine line, int number) {
        LoggedLine target = byNumber.get(number);
        if (target == null || number >= line.entry().number()) {
            line.cells()
                    .problem(
                            VOIDS,
                            "there is no earlier entry " + number,
                            "write the number of the entry that was wrong");
        } else if (target.entry().fact() instanceof Fact.Voided) {
            line.cells()
                    .problem(
                            VOIDS,
                            "entry " + number + " voids another",
                            "write the fact again as a new entry if it was right after all");
        } else {
            Integer before = voidedBy.putIfAbsent(number, line.entry().number());
            if (before != null) {
                line.cells()
                        .problem(
                                VOIDS,
                                "entry " + number + " is void already, by entry " + before,
                                "leave this entry out, or check the number");
            }
        }
    }
}
