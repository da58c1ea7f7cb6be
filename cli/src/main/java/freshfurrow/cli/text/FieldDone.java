package freshfurrow.cli.text;

import freshfurrow.cli.day.FieldWork;

/** What a plan does to a field, in words for other programs and for people. */
public final class FieldDone {
    private FieldDone() {}

    /** As {@code planted}, {@code planted in part without extract}, {@code sprayed} or {@code unplanted}. */
    public static String words(FieldWork work) {
        WorkWords words = WorkWords.of(work.field().work());
        if (work.pieces().isEmpty()) {
            return words.undone();
        }
        if (work.withoutExtractHa() == 0) {
            return words.done();
        }
        return words.done() + (work.withExtractHa() > 0 ? " in part without extract" : " without extract");
    }
}
