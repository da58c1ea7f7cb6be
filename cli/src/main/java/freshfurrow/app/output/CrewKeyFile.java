package freshfurrow.app.output;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The secret by which the phones of a crew open a season's desk. It lies beside the season file, so that phones need no new code each
 * morning; whoever deletes it locks all of them out.
 */
public final class CrewKeyFile {
    private static final String NAME = ".freshfurrow-crew";
    private static final Pattern SECRET = Pattern.compile("[0-9a-f]{40}");

    private final Path file;

    public CrewKeyFile(GivenSeason season) {
        file = season.folder().resolve(NAME);
    }

    /** Empty when there is none, or what is there is none. */
    public Optional<String> read() {
        try {
            return Files.isRegularFile(file)
                    ? Optional.of(Files.readString(file).strip())
                            .filter(text -> SECRET.matcher(text).matches())
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty(); // a new one is drawn then, and writing it says what is wrong
        }
    }

    /**
     * Puts a secret in its place.
     *
     * @param secret 40 hexadecimal digits
     * @throws freshfurrow.app.refusal.Refused when it cannot be written
     */
    public void write(String secret) {
        OutFiles.MADE.writeAll(List.of(NewFile.of(file, secret + "\n", IfThere.REPLACE)));
    }
}
