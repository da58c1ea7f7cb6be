package freshfurrow.desk.words;

import freshfurrow.app.refusal.Refusal;
import freshfurrow.cli.words.RefusalWords;
import java.util.List;

/** What is told at the desk of what cannot be done. */
public final class DeskWords {
    private DeskWords() {}

    /** A line for each thing that is wrong, with what would help. */
    public static List<String> lines(Refusal refusal) {
        return RefusalWords.lines(refusal);
    }

    /** That the program itself failed. */
    public static List<String> own(Throwable failure) {
        return List.of(
                "An error in the program itself, not in your files: "
                        + String.valueOf(failure).replaceAll("\\p{Cntrl}+", " "),
                "Please report it with your season file.");
    }
}
