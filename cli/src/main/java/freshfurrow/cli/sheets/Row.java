package freshfurrow.cli.sheets;

import java.util.List;
import java.util.Optional;

/**
 * A step on a sheet.
 *
 * @param when planned time, as it is shown
 * @param verb what is done, in a word
 * @param subject on what and where
 * @param amounts what to measure out, or else notes, a line each
 * @param useBy the time by which the mix has to be in the ground, where there is mix
 * @param trueAmounts what the crew writes down besides the time, with units
 */
record Row(
        String when,
        Weight weight,
        String verb,
        List<Part> subject,
        List<String> amounts,
        Optional<String> useBy,
        List<Blank> trueAmounts) {
    Row {
        subject = List.copyOf(subject);
        amounts = List.copyOf(amounts);
        trueAmounts = List.copyOf(trueAmounts);
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

    /** A piece of text; a name comes from someone's file. */
    record Part(String text, boolean isName) {
        static Part text(String text) {
            return new Part(text, false);
        }

        static Part name(String text) {
            return new Part(text, true);
        }
    }

    /** Room to write a figure. */
    record Blank(String of, String unit) {}
}
