package freshfurrow.app.output;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.refusal.FileFailure;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.OutputRefusal.Unwritten;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.files.WriteTurn;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder with the plans of a season, all of which are kept: {@code plans/001.json} and on, and {@code plan.json}, which is the newest
 * of them. A plan stands among those kept before it becomes the newest, and either happens whole or not at all.
 */
public final class PlanArchive {
    private static final String KEPT = "plans";
    private static final Pattern NAME = Pattern.compile("(\\d{3,9})\\.json");

    private static final OutFiles BEFORE = new OutFiles(Unwritten.PLANNING);
    private static final OutFiles AFTER = new OutFiles(Unwritten.REPLAN);

    private final Path folder;
    private final Path followed;
    private final boolean force;

    private PlanArchive(Path folder, Path followed, boolean force) {
        this.folder = folder;
        this.followed = followed;
        this.force = force;
    }

    /** The folder of a plan file, whether that is the newest plan or one of those kept. */
    public static Path folderOf(Path planFile) {
        Path folder = planFile.toAbsolutePath().normalize().getParent();
        if (folder == null) {
            throw new Refused(new InputRefusal.NoPlanFile(planFile));
        }
        Path name = folder.getFileName();
        Path above = folder.getParent();
        return name != null && name.toString().equals(KEPT) && above != null ? above : folder;
    }

    /**
     * A folder that a new plan is to come into.
     *
     * @param followed the plan file that was followed
     * @param force whether whatever is there may be replaced
     */
    public static PlanArchive in(Path folder, Path followed, boolean force) {
        return new PlanArchive(folder, followed, force);
    }

    /** A folder of the plans of one season, of which the newest may be followed by another. */
    public static PlanArchive own(Path folder) {
        return in(folder, folder.resolve(GivenPlan.FILE_NAME), false);
    }

    public Path newest() {
        return folder.resolve(GivenPlan.FILE_NAME);
    }

    private Path page() {
        return folder.resolve(PlanTarget.PAGE_NAME);
    }

    /**
     * Makes sure, before time goes into planning, that a plan can be added.
     *
     * @param withPage whether a page comes with the plan
     * @throws Refused when it cannot
     */
    public void refuseObstructed(boolean withPage) {
        BEFORE.refuseObstructed(List.of(newest()), newestIfThere());
        if (withPage) {
            BEFORE.refuseObstructed(List.of(page()), pageIfThere());
        }
        refuseLinkedFolder();
        BEFORE.tryOut(folder);
    }

    /**
     * Keeps a plan and makes it the newest. A plan that is there and not kept yet is kept first. All is written or nothing.
     *
     * @param plan the text of its file
     * @return where it is kept
     * @throws Refused when it cannot be written; then all is as it was
     */
    public Path add(String plan, Optional<String> page) {
        return addIf(() -> true, plan, page);
    }

    /**
     * Does so where the newest plan is still the one that the new one was held against.
     *
     * @param before what {@link #newestText} said of it; empty when there was none
     * @see #add
     */
    public Path addAfter(Optional<String> before, String plan, Optional<String> page) {
        return addIf(() -> newestText().equals(before), plan, page);
    }

    /** The newest plan's file, a char a byte; empty when there is none. */
    public Optional<String> newestText() {
        try {
            return Files.isRegularFile(newest())
                    ? Optional.of(Files.readString(newest(), StandardCharsets.ISO_8859_1))
                    : Optional.empty();
        } catch (IOException e) {
            throw new Refused(
                    new InputRefusal.UnreadablePlan(newest() + ": cannot be read (" + FileFailure.reason(e) + ")"));
        }
    }

    private Path addIf(BooleanSupplier isAsSeen, String plan, Optional<String> page) {
        try {
            return WriteTurn.in(List.of(folder, folder.resolve(KEPT)), WriteTurn.PATIENCE, turn -> {
                refuseLinkedFolder();
                if (!isAsSeen.getAsBoolean()) {
                    throw new Refused(new PlanningRefusal.PlanChanged(newest()));
                }
                List<NewFile> files = new ArrayList<>();
                int number = lastNumber() + 1;
                if (Files.isRegularFile(newest(), LinkOption.NOFOLLOW_LINKS) && !isKept(newest())) {
                    files.add(NewFile.of(kept(number), Files.readAllBytes(newest()), IfThere.KEEP));
                    number++;
                }
                files.add(NewFile.of(kept(number), plan, IfThere.KEEP));
                files.add(NewFile.of(newest(), plan, newestIfThere()));
                page.ifPresent(text -> files.add(NewFile.of(page(), text, pageIfThere())));
                turn.write(files);
                return kept(number);
            });
        } catch (IOException e) {
            throw AFTER.refusal(newest(), e);
        }
    }

    /** In the folder of the plan that was followed, the newest plan and its page are replaced unasked, as that plan is kept. */
    private IfThere newestIfThere() {
        return IfThere.replaceIf(force || (isOwn() && (isSame(newest(), followed) || OwnFile.isPlan(newest()))));
    }

    private IfThere pageIfThere() {
        return IfThere.replaceIf(force || (isOwn() && OwnFile.isPage(page())));
    }

    private boolean isOwn() {
        return isSame(folderOf(followed), folder);
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException e) {
            return false; // one is not there
        }
    }

    private void refuseLinkedFolder() {
        Path kept = folder.resolve(KEPT);
        if (Files.isSymbolicLink(kept)) {
            throw BEFORE.refusal(kept, Obstacle.LINK);
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
            return files.filter(file -> number(file) > 0 && Files.isRegularFile(file))
                    .toList();
        }
    }

    private int lastNumber() throws IOException {
        return kept().stream().mapToInt(PlanArchive::number).max().orElse(0);
    }

    private Path kept(int number) {
        return folder.resolve(KEPT).resolve(String.format(Locale.ROOT, "%03d.json", number));
    }

    private static int number(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        return name.matches() ? Integer.parseInt(name.group(1)) : 0;
    }
}
