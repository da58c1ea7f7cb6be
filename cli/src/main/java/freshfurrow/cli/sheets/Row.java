package freshfurrow.cli.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A step on a sheet.
 *
 * @param when planned time, as it is shown
 * @param weight how much it stands out
 * @param what what is done, on what and where
 * @param thenClean whether drum and strainer are cleaned right after it
 * @param useBy the time by which the mix has to be in the ground, where there is mix
 * @param trueAmounts what the crew writes down besides the time
 */
record Row(
        String when,
        Weight weight,
        List<Part> what,
        boolean thenClean,
        Optional<String> useBy,
        List<Blank> trueAmounts) {
    Row {
        what = List.copyOf(what);
        trueAmounts = List.copyOf(trueAmounts);
    }

    Row withCleaning() {
        return new Row(when, weight, what, true, useBy, trueAmounts);
    }

    /** The same with what follows it, which has a box of its own. */
    Row and(Row next) {
        List<Part> both = new ArrayList<>(what);
        both.add(Part.text("; "));
        both.add(Part.box());
        both.add(Part.text(" " + next.when + " "));
        both.addAll(next.what);
        return new Row(when, next.weight, both, next.thenClean, next.useBy, next.trueAmounts);
    }

    /** How much a step stands out. */
    enum Weight {
        /** The crew measures something out and writes down what it was. */
        MAIN,
        /** It is done and ticked, and its time written down. */
        MINOR,
        /** Nothing is done. */
        WAIT
    }

    /** Whether the crew does something, so that it ticks it and writes down when it was. */
    boolean isDone() {
        return weight != Weight.WAIT;
    }

    /** A piece of what is done. */
    record Part(Kind kind, String text) {
        /** A name comes from someone's file. */
        enum Kind {
            TEXT,
            NAME,
            VERB,
            BOX
        }

        static Part text(String text) {
            return new Part(Kind.TEXT, text);
        }

        static Part name(String text) {
            return new Part(Kind.NAME, text);
        }

        static Part verb(String text) {
            return new Part(Kind.VERB, text);
        }

        static Part box() {
            return new Part(Kind.BOX, "");
        }
    }

    /**
     * Room to write a figure.
     *
     * @param unit behind it, with the planned amount where there is room for that
     */
    record Blank(String unit) {}
}
