package freshfurrow.model.read;

import static freshfurrow.model.log.Column.ENTRY;
import static freshfurrow.model.log.Column.TAKES_BACK;

import freshfurrow.model.log.Fact;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The numbers of a log's entries: each once, and what takes one back names an earlier one that still holds. */
final class LogNumbers {
    private final Map<Integer, LoggedLine> byNumber = new HashMap<>();
    private final Map<Integer, Integer> takenBackBy = new HashMap<>();

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
            if (line.entry().fact() instanceof Fact.TakenBack back) {
                checkTakeback(line, back.entry());
            }
        }
    }

    private void checkTakeback(LoggedLine line, int number) {
        LoggedLine target = byNumber.get(number);
        if (target == null || number >= line.entry().number()) {
            line.cells()
                    .problem(
                            TAKES_BACK,
                            "there is no earlier entry " + number,
                            "write the number of the entry that was wrong");
        } else if (target.entry().fact() instanceof Fact.TakenBack) {
            line.cells()
                    .problem(
                            TAKES_BACK,
                            "entry " + number + " takes back another",
                            "write the fact again as a new entry when it was right after all");
        } else {
            Integer before = takenBackBy.putIfAbsent(number, line.entry().number());
            if (before != null) {
                line.cells()
                        .problem(
                                TAKES_BACK,
                                "entry " + number + " is taken back by entry " + before + " already",
                                "leave this entry out, or check the number");
            }
        }
    }
}
