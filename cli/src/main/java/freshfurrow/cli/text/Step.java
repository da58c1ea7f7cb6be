package freshfurrow.cli.text;

import java.util.Optional;

/**
 * A step of a crew's day in words.
 *
 * @param clock from when to when, as {@code 07:00-07:15}
 * @param verb what is done; in capitals what the crew measures out
 * @param text on what, how much and where
 * @param note by when, and out of what
 */
public record Step(String clock, String verb, String text, Optional<String> note) {
    Step noting(String note) {
        return new Step(clock, verb, text, Optional.of(note));
    }

    /** All of it on one line. */
    public String line() {
        return clock + " " + verb + " " + text + note.map(more -> "; " + more).orElse("");
    }
}
