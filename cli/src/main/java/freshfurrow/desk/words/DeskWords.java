package freshfurrow.desk.words;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refusal;
import freshfurrow.app.refusal.SpringsRefusal;
import freshfurrow.cli.words.RefusalWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What is told at the desk of what cannot be done: as on the command line, but where an option would help there. */
public final class DeskWords {
    private static final String CHANGED =
            "The season was changed after this plan was made; replan, or make a new plan.";

    private DeskWords() {}

    /** A line for each thing that is wrong, with what would help. */
    public static List<String> lines(Refusal refusal) {
        return own(refusal).orElseGet(() -> RefusalWords.lines(refusal));
    }

    private static Optional<List<String>> own(Refusal refusal) {
        if (refusal instanceof InputRefusal.PlanOfAnotherSeason
                || refusal instanceof InputRefusal.SeasonOfAnotherPlan) {
            return one(CHANGED);
        }
        if (refusal instanceof InputRefusal.ImpossibleStart impossible) {
            return one("The season was changed so that it does not go with what was done: " + impossible.reason()
                    + ". Change it back, or plan the whole season anew.");
        }
        if (refusal instanceof OutputRefusal.Obstructed obstructed) {
            return Optional.of(obstructed.obstructions().stream()
                    .map(one -> one.file() + ": " + one.obstacle().words() + ", so nothing was written.")
                    .toList());
        }
        if (refusal instanceof OutputRefusal.Unwritable unwritable) {
            return one(unwritable.path() + ": cannot be written (" + unwritable.reason() + "); all is as it was.");
        }
        if (refusal instanceof PlanningRefusal.NoTime noTime) {
            return one(outside(noTime.first(), noTime.last())
                    + " and nothing is logged that would tell from when on to plan.");
        }
        if (refusal instanceof PlanningRefusal.OutOfSeason out) {
            return one(out.now() + " is outside the season (" + out.first() + " to " + out.last() + ").");
        }
        if (refusal instanceof PlanningRefusal.PlanBeginsLater later) {
            return one("The plan that is followed starts at " + later.begins() + ", after " + later.now() + ".");
        }
        if (refusal instanceof LogRefusal.NoTimeOfEntry noTime) {
            return one(outside(noTime.first(), noTime.last()) + "; say when it was.");
        }
        if (refusal instanceof LogRefusal.ObstructedLog log) {
            return one(log.log() + ": " + log.obstacle().words() + ", so nothing was added.");
        }
        if (refusal instanceof PlanRefusal.PlantedBefore planted) {
            return one(planted.field() + " was finished before this plan starts.");
        }
        if (refusal instanceof PlanRefusal.Unplayable || refusal instanceof PlanRefusal.BeginsInAnotherSeason) {
            return one(
                    "The plan was made by another version of the program, or was changed; replan, or make a new plan.");
        }
        if (refusal instanceof SpringsRefusal.NoRecord) {
            return one("The season names no weather record. Choose a station's file under Season, Weather.");
        }
        if (refusal instanceof SpringsRefusal.TooFewSprings few) {
            return one(few.record() + ": holds " + few.there() + " springs, too few to generate more; ask for at most "
                    + few.there() + ".");
        }
        return Optional.empty();
    }

    private static Optional<List<String>> one(String line) {
        return Optional.of(List.of(line));
    }

    private static String outside(LocalDate first, LocalDate last) {
        return "Today is outside the season (" + first + " to " + last + ")";
    }

    /** That the program itself failed. */
    public static List<String> own(Throwable failure) {
        return List.of(
                "An error in the program itself, not in your files: "
                        + String.valueOf(failure).replaceAll("\\p{Cntrl}+", " "),
                "Please report it with your season file.");
    }
}
