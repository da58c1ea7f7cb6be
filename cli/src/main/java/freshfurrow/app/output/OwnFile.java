package freshfurrow.app.output;

import freshfurrow.cli.page.SeasonPage;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.PlanFileException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Tells files that freshfurrow has written from those that merely have such a name. */
public final class OwnFile {
    private OwnFile() {}

    public static boolean isPlan(Path file) {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try {
            PlanFile.read(file);
            return true;
        } catch (PlanFileException e) {
            return false;
        }
    }

    public static boolean isPage(Path file) {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return SeasonPage.isBegunBy(new String(in.readNBytes(SeasonPage.BEGINNING_BYTES), StandardCharsets.UTF_8));
        } catch (IOException e) {
            return false;
        }
    }
}
