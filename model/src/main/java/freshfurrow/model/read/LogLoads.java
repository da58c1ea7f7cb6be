package freshfurrow.model.read;

import static freshfurrow.model.log.Column.AT;
import static freshfurrow.model.log.Column.LOAD;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Loads that a log speaks of: planted are those that were made or planned, and only after they were made. */
final class LogLoads {
    private final LogContext context;
    private final List<LoggedLine> lines;
    private final Map<String, List<LoggedLine>> batches = new HashMap<>();

    LogLoads(LogContext context, List<LoggedLine> lines) {
        this.context = context;
        this.lines = lines;
        for (LoggedLine line : lines) {
            if (line.entry().fact() instanceof Fact.BatchMade batch) {
                batch.loads().forEach(load -> batches.computeIfAbsent(load, id -> new ArrayList<>())
                        .add(line));
            }
        }
    }

    void check() {
        for (LoggedLine line : lines) {
            if (line.entry().fact() instanceof Fact.Planted planted) {
                planted.load().ifPresent(load -> {
                    checkKnown(line, load);
                    batches.getOrDefault(load, List.of()).forEach(batch -> checkOrder(line, batch, load));
                });
            }
        }
    }

    private void checkKnown(LoggedLine line, String load) {
        boolean known = context.plannedLoads().map(ids -> ids.contains(load)).orElse(true) || batches.containsKey(load);
        if (!known) {
            TreeSet<String> ids = new TreeSet<>(batches.keySet());
            context.plannedLoads().ifPresent(ids::addAll);
            line.cells()
                    .problem(
                            LOAD,
                            "there is no load " + load + ", neither in a plan nor of a batch in the log",
                            ids.isEmpty()
                                    ? "write its batches first, or leave the cell empty"
                                    : FieldReader.unknown(load, ids));
        }
    }

    private static void checkOrder(LoggedLine planted, LoggedLine batch, String load) {
        Entry early = planted.entry();
        Entry late = batch.entry();
        if (late.at().isAfter(early.at())) {
            LoggedLine blamed = early.number() > late.number() ? planted : batch;
            blamed.cells()
                    .problem(
                            AT,
                            "load " + load + " is planted at " + early.at() + " by entry " + early.number()
                                    + ", before its batch of entry " + late.number() + " ends at " + late.at(),
                            "check times and load, or void a wrong entry first");
        }
    }
}
