package freshfurrow.cli.command;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder with the plans of a season, all of which are kept: {@code plans/001.json} and on, and {@code plan.json}, which is the newest
 * of them. A plan stands among those kept before it becomes the newest, and either happens whole or not at all.
 */
final class PlanArchive {
    private static final String KEPT = "plans";
    private static final Pattern NAME = Pattern.compile("(\\d{3,9})\\.json");

    private final Path folder;

    private PlanArchive(Path folder) {
        this.folder = folder;
    }

    /** The folder of a plan file, whether that is the newest plan or one of those kept. */
    static Path folderOf(Path planFile) {
        Path folder = planFile.toAbsolutePath().normalize().getParent();
        if (folder == null) {
            throw new Refusal(planFile + ": is no plan file");
        }
        Path name = folder.getFileName();
        Path above = folder.getParent();
        return name != null && name.toString().equals(KEPT) && above != null ? above : folder;
    }

    static PlanArchive in(Path folder) {
        return new PlanArchive(folder);
    }

    Path newest() {
        return folder.resolve(PlanArgument.FILE_NAME);
    }

    /**
     * Keeps a plan and makes it the newest. A plan that is there and not kept yet is kept first.
     *
     * @return where it is kept
     * @throws Refusal when it cannot be written; then the newest plan is the one it was
     */
    Path add(Plan plan) {
        Path kept = folder.resolve(KEPT);
        try {
            Files.createDirectories(kept);
            if (Files.exists(newest()) && !isKept(newest())) {
                WholeFile.write(next(kept), Files.readAllBytes(newest()));
            }
            Path file = next(kept);
            String text = PlanFile.toJson(plan);
            WholeFile.write(file, text);
            WholeFile.write(newest(), text);
            return file;
        } catch (IOException e) {
            throw new Refusal(newest() + ": cannot be written (" + Failures.reason(e)
                    + "), so the plan that was there still is; choose another folder with --out DIR");
        }
    }

    private boolean isKept(Path plan) throws IOException {
        byte[] content = Files.readAllBytes(plan);
        for (Path file : kept()) {
            if (Arrays.equals(content, Files.readAllBytes(file))) {
                return true;
            }
        }
        return false;
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(KEPT))) {
            return files.filter(file -> number(file) > 0).toList();
        }
    }

    private Path next(Path kept) throws IOException {
        int last = kept().stream().mapToInt(PlanArchive::number).max().orElse(0);
        return kept.resolve(String.format(Locale.ROOT, "%03d.json", last + 1));
    }

    private static int number(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        return name.matches() ? Integer.parseInt(name.group(1)) : 0;
    }
}
