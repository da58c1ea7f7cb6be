package freshfurrow.cli.command;

import freshfurrow.model.plan.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;

/** A file that a command makes out of a plan; it replaces nothing unasked. */
record NewFile(Path path, String text) {
    /**
     * Writes all of the files, or none when one of them is there already.
     *
     * @param force whether files that are there may be replaced
     * @throws Refusal when one is there or cannot be written
     */
    static void writeAll(List<NewFile> files, boolean force) {
        refuseThoseThere(files.stream().map(NewFile::path).toList(), force);
        files.forEach(NewFile::write);
    }

    /**
     * Makes sure, before time goes into what is to be written, that nothing stands there.
     *
     * @param force whether files that are there may be replaced
     * @throws Refusal when one is there
     */
    static void refuseThoseThere(List<Path> files, boolean force) {
        List<String> there = files.stream()
                .filter(path -> !force && Files.exists(path, LinkOption.NOFOLLOW_LINKS))
                .map(path -> path + ": there is such a file already, so nothing was written; replace it with --force,"
                        + " or write elsewhere with --out")
                .toList();
        if (!there.isEmpty()) {
            throw new Refusal(there);
        }
    }

    private void write() {
        try {
            Path folder = path.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            WholeFile.write(path, text);
        } catch (IOException e) {
            throw new Refusal(
                    path + ": cannot be written (" + Failures.reason(e) + "); choose another place with --out");
        }
    }
}
