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
 * @param useBy the time by which the mix has to be in the ground, where there is mix
 * @param trueAmounts what the crew writes down besides the time
 */
record Row(String when, Weight weight, List<Part> what, Optional<String> useBy, List<Blank> trueAmounts) {
    Row {
        what = List.copyOf(what);
        trueAmounts = List.copyOf(trueAmounts);
    }

    Row withCleaning() {
        List<Part> both = new ArrayList<>(what);
        both.add(Part.text("; clean"));
        return new Row(when, weight, both, useBy, trueAmounts);
    }

    /** The same with what follows it, and with that one's weight. */
    Row and(Row next) {
        List<Part> both = new ArrayList<>(what);
        both.add(Part.text("; " + next.when + " "));
        both.addAll(next.what);
        return new Row(when, next.weight, both, next.useBy, next.trueAmounts);
    }

    /** How much a step stands out. */
    enum Weight {
        /** A batch, a load, a field or a stop that matters: the crew ticks it, and writes down when it was and how much. */
        TICKED,
        /** The crew writes down when it was and how much. */
        MEASURED,
        /** It is done on the way. */
        MINOR,
        /** Nothing is done. */
        WAIT
    }

    boolean isTicked() {
        return weight == Weight.TICKED;
    }

    /** Whether there is room to write down when it was. */
    boolean isTimed() {
        return weight == Weight.TICKED || weight == Weight.MEASURED;
    }

    /** A piece of what is done. */
    record Part(Kind kind, String text) {
        /** A name comes from someone's file. */
        enum Kind {
            TEXT,
            NAME,
            VERB
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
    }

    /**
     * Room to write a figure.
     *
     * @param unit behind it, with the planned amount where there is room for that
     */
    record Blank(String unit) {}
}
