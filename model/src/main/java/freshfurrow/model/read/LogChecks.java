package freshfurrow.model.read;

import static freshfurrow.model.log.Column.AMOUNT;
import static freshfurrow.model.log.Column.AT;
import static freshfurrow.model.log.Column.LOT;
import static freshfurrow.model.log.Column.UNTIL;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.PlantedArea;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Rig;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the entries of a log that hold, each right by itself, must be to the season and to one another. Of entries that do not go
 * together the one with the highest number is the one complained of.
 */
final class LogChecks {
    /** Twice a full batch is two batches. */
    private static final double BATCHES = 2;

    private final LogContext context;
    private final List<LoggedLine> lines;
    private final LogFigures figures;
    private final Map<String, Rig> rigs;

    /** @param lines of entries that hold, by number */
    LogChecks(LogContext context, List<LoggedLine> lines) {
        this.context = context;
        this.lines = lines;
        this.figures = new LogFigures(context.season().units());
        this.rigs = context.season().rigs().stream().collect(Collectors.toMap(Rig::id, Function.identity()));
    }

    void check() {
        lines.forEach(this::checkTime);
        lines.forEach(this::checkAgainstRig);
        checkTwice();
        checkAreas();
        new LogLoads(context, lines).check();
    }

    private void checkTime(LoggedLine line) {
        LocalDateTime at = line.entry().at();
        LocalDateTime begin = context.season().start();
        LocalDateTime end = context.season().end();
        String remedy = "check date and time; a log tells what has happened";
        if (at.isBefore(begin)) {
            line.cells()
                    .problem(
                            AT,
                            at + " is before the season, which starts on "
                                    + context.season().first(),
                            "check the date; put what was there before in the season file");
        } else if (at.isAfter(end)) {
            line.cells()
                    .problem(
                            AT,
                            at + " is after the season, which ends on "
                                    + context.season().last(),
                            remedy);
        } else if (at.isAfter(context.latest())) {
            line.cells().problem(AT, at + " is in the future: it is " + context.latest() + " now", remedy);
        }
        if (line.entry().fact() instanceof Fact.MachineDown down) {
            checkUntil(line, down.until(), "when it started", "write when the machine works again, or leave it empty");
        } else if (line.entry().fact() instanceof Fact.GroundJudged judged) {
            checkUntil(
                    line,
                    judged.until(),
                    "when that was said",
                    "write from when on the ground will be fit, or leave it empty");
        }
    }

    private static void checkUntil(LoggedLine line, Optional<LocalDateTime> until, String since, String remedy) {
        LocalDateTime at = line.entry().at();
        until.filter(end -> !end.isAfter(at))
                .ifPresent(end -> line.cells().problem(UNTIL, end + " is not after " + at + ", " + since, remedy));
    }

    private void checkAgainstRig(LoggedLine line) {
        if (line.entry().fact() instanceof Fact.WaterDrawn drawn) {
            Rig rig = rigs.get(drawn.rig());
            double mostL = rig.nurseTankL() + rig.drumL();
            if (drawn.litres() > mostL) {
                line.cells()
                        .problem(
                                AMOUNT,
                                figures.volume(drawn.litres()) + " is more than " + rig.id() + " holds, "
                                        + figures.volume(mostL) + " in nurse tank and drum",
                                "check the amount; write one entry for each draw");
            }
        } else if (line.entry().fact() instanceof Fact.BatchMade batch) {
            Rig rig = rigs.get(batch.rig());
            if (batch.compostKg() >= BATCHES * rig.batchCompostKg()) {
                line.cells()
                        .problem(
                                line.cells().has(AMOUNT) ? AMOUNT : LOT,
                                figures.mass(batch.compostKg()) + " is two full batches of " + rig.id() + " or more, "
                                        + figures.mass(rig.batchCompostKg()) + " each",
                                "check the amount; write one entry for each batch");
            }
        }
    }

    private void checkTwice() {
        Map<Object, Entry> seen = new HashMap<>();
        for (LoggedLine line : lines) {
            Entry before = seen.putIfAbsent(sameFact(line.entry()), line.entry());
            if (before != null) {
                line.cells()
                        .problem(
                                AT,
                                "entry " + before.number() + " says the same for the same time",
                                "leave this one out, correct its time, or void entry " + before.number() + " first");
            }
        }
    }

    /** What two entries have in common that cannot both be right: no two batches of a rig end at once. */
    private static List<Object> sameFact(Entry entry) {
        Fact fact = entry.fact();
        Object subject = fact;
        if (fact instanceof Fact.Planted planted) {
            subject = List.of(planted.field(), planted.planter(), planted.load());
        } else if (fact instanceof Fact.BatchMade batch) {
            subject = batch.rig();
        } else if (fact instanceof Fact.Transferred transferred) {
            subject = transferred.rig();
        } else if (fact instanceof Fact.Driven driven) {
            subject = driven.machine();
        } else if (fact instanceof Fact.WaterDrawn drawn) {
            subject = drawn.rig();
        } else if (fact instanceof Fact.CompostDelivered delivered) {
            subject = delivered.lot();
        } else if (fact instanceof Fact.CompostSpoiled spoiled) {
            subject = spoiled.lot();
        } else if (fact instanceof Fact.MachineDown down) {
            subject = down.machine();
        } else if (fact instanceof Fact.MachineBehind behind) {
            subject = behind.machine();
        } else if (fact instanceof Fact.GroundJudged judged) {
            subject = judged.field();
        } else if (fact instanceof Fact.Noted) {
            subject = entry.note();
        } else if (fact instanceof Fact.RainMeasured) {
            subject = "";
        }
        return List.of(fact.getClass(), subject, entry.at());
    }

    private void checkAreas() {
        Map<String, PlantedArea> areas = new HashMap<>();
        for (Field field : context.season().fields()) {
            areas.put(field.id(), PlantedArea.none(field));
        }
        for (LoggedLine line : lines) {
            if (line.entry().fact() instanceof Fact.Planted planted) {
                PlantedArea before = areas.get(planted.field());
                PlantedArea after =
                        before.plus(planted.areaHa(), context.season().units().area());
                areas.put(planted.field(), after);
                if (after.isTooMuch()) {
                    String left = before.isWhole()
                            ? planted.field() + " is finished already"
                            : planted.field() + " has " + figures.area(before.leftHa()) + " left to plant of "
                                    + figures.area(before.fieldHa());
                    line.cells()
                            .problem(
                                    AMOUNT,
                                    left + ", not " + figures.area(planted.areaHa()),
                                    "check field and amount, or void a wrong entry first");
                }
            }
        }
    }
}
