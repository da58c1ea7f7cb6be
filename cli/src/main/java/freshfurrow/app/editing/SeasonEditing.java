package freshfurrow.app.editing;

import freshfurrow.app.editing.EditAnswer.ChangedMeanwhile;
import freshfurrow.app.editing.EditStep.ChangedText;
import freshfurrow.app.refusal.EditRefusal;
import freshfurrow.app.refusal.FileFailure;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.edit.Edit;
import freshfurrow.model.files.ChangedFile;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.files.ObstructedFile;
import freshfurrow.model.files.WriteTurn;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.read.SeasonSources;
import freshfurrow.model.read.tree.TextFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Edits of one season's files. For as many threads as there are; of other programs, those that write by {@code model/files} wait for
 * their turn, and what any other wrote is seen before a file is replaced.
 */
public final class SeasonEditing {
    private static final int MOST_STEPS = 200;
    private static final long MOST_CHARACTERS = 64L << 20;

    private final Path season;
    private final HandedOut handedOut = new HandedOut();
    private final EditHistory history = new EditHistory(MOST_STEPS, MOST_CHARACTERS);

    private Optional<LastDraft> last = Optional.empty();

    /** Of the season's files when it was last read. */
    private Set<Path> folders = Set.of();

    /**
     * Edits from now on.
     *
     * @param season a season file, or a folder that holds season.yaml
     */
    public SeasonEditing(Path season) {
        this.season = season;
    }

    /** The season as it is written now. */
    public synchronized Draft draft() {
        LastDraft now = last.filter(LastDraft::isStillRight).orElseGet(() -> LastDraft.of(sources()));
        now.sources().files().forEach(handedOut::add);
        last = Optional.of(now);
        return now.draft();
    }

    /**
     * Makes all of the edits, one after the other, or none. What they leave undone or wrong of a season is saved too.
     *
     * @param seen digests of the files as whoever asks has seen them
     * @throws Refused when one of them cannot be made, or a file cannot be written; then all is as it was
     */
    public synchronized EditAnswer apply(List<Edit> edits, Map<String, String> seen) {
        return inTurn(List.of(), (turn, sources) -> {
            SeenFiles files = new SeenFiles(sources, handedOut, seen);
            Optional<ChangedMeanwhile> changed = files.changed(edits);
            if (changed.isPresent()) {
                return changed.get();
            }
            EditStep step = new EditStep(files.edited(edits));
            if (!step.files().isEmpty()) {
                write(turn, step);
                history.did(step);
            }
            return new EditAnswer.Saved(draft());
        });
    }

    /**
     * Puts the files back to the byte as they were before the last edits.
     *
     * @throws Refused when there are none, or a file cannot be written; then all is as it was
     */
    public synchronized EditAnswer undo() {
        EditStep step = history.lastDone()
                .orElseThrow(() -> new Refused(new EditRefusal.NothingToUndo()))
                .reversed();
        return again(step, history::undid);
    }

    /**
     * Puts the files to the byte as they were before the last undoing.
     *
     * @throws Refused when there is none, or a file cannot be written; then all is as it was
     */
    public synchronized EditAnswer redo() {
        EditStep step = history.lastUndone().orElseThrow(() -> new Refused(new EditRefusal.NothingToRedo()));
        return again(step, history::redid);
    }

    /** Whether there are edits to undo. */
    public synchronized boolean canUndo() {
        return history.lastDone().isPresent();
    }

    /** Whether there are edits that were undone, to make again. */
    public synchronized boolean canRedo() {
        return history.lastUndone().isPresent();
    }

    private EditAnswer again(EditStep step, Runnable afterwards) {
        List<Path> paths = step.files().stream().map(ChangedText::path).toList();
        return inTurn(paths, (turn, sources) -> {
            for (ChangedText file : step.files()) {
                Optional<TextFile> now = FileNow.text(file.path(), file.before().name());
                if (now.filter(text -> text.sha256().equals(file.before().sha256()))
                        .isEmpty()) {
                    return new ChangedMeanwhile(
                            file.before().name(),
                            now.map(TextFile::text),
                            Optional.of(file.after().text()));
                }
            }
            write(turn, step);
            afterwards.run();
            return new EditAnswer.Saved(draft());
        });
    }

    private SeasonSources sources() {
        SeasonSources sources = SeasonFiles.sources(season, List.of());
        Set<Path> all = new HashSet<>(Set.of(WriteTurn.folder(sources.path())));
        sources.files().forEach(file -> all.add(WriteTurn.folder(file.path())));
        folders = Set.copyOf(all);
        return sources;
    }

    private static void write(WriteTurn turn, EditStep step) throws IOException {
        List<NewFile> files = new ArrayList<>();
        for (ChangedText file : step.files()) {
            files.add(NewFile.inPlaceOf(
                    file.before().bytes(), file.path(), file.after().bytes()));
        }
        turn.write(files);
    }

    /** What is done while nobody else writes the season's files. */
    @FunctionalInterface
    private interface Work {
        EditAnswer run(WriteTurn turn, SeasonSources now) throws IOException;
    }

    private EditAnswer inTurn(List<Path> others, Work work) {
        while (true) {
            try {
                Optional<EditAnswer> answer = inTurnOnce(others, work);
                if (answer.isPresent()) {
                    return answer.get();
                }
            } catch (ObstructedFile e) {
                throw new Refused(new EditRefusal.ObstructedSeason(Path.of(e.getFile()), e.obstacle()));
            } catch (IOException e) {
                throw new Refused(new EditRefusal.UnwritableSeason(season, FileFailure.reason(e)));
            }
        }
    }

    /** Empty when it has to be done anew: the season has files in other folders, or a program that takes no turns wrote this moment. */
    private Optional<EditAnswer> inTurnOnce(List<Path> others, Work work) throws IOException {
        Set<Path> held = new HashSet<>(folders);
        others.forEach(path -> held.add(WriteTurn.folder(path)));
        List<Path> there = held.stream().filter(Files::isDirectory).toList();
        try {
            return WriteTurn.in(there, WriteTurn.PATIENCE, turn -> {
                SeasonSources now = sources();
                return held.containsAll(folders) ? Optional.of(work.run(turn, now)) : Optional.empty();
            });
        } catch (ChangedFile e) {
            return Optional.empty();
        }
    }
}
