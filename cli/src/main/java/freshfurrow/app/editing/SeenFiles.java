package freshfurrow.app.editing;

import freshfurrow.app.editing.EditAnswer.ChangedMeanwhile;
import freshfurrow.app.editing.EditStep.ChangedText;
import freshfurrow.app.refusal.EditRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.edit.Edit;
import freshfurrow.model.edit.Edited;
import freshfurrow.model.edit.SeasonText;
import freshfurrow.model.read.Problem;
import freshfurrow.model.read.SeasonSources;
import freshfurrow.model.read.SourceFile;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** The files of a season as they are in this turn, held against what whoever asks has seen of them. */
final class SeenFiles {
    private final SeasonSources sources;
    private final HandedOut handedOut;
    private final Map<String, String> seen;

    /** @param seen digests by name */
    SeenFiles(SeasonSources sources, HandedOut handedOut, Map<String, String> seen) {
        this.sources = sources;
        this.handedOut = handedOut;
        this.seen = new LinkedHashMap<>(seen);
    }

    /** The first file that is not as it was seen; the season file comes before all others. */
    Optional<ChangedMeanwhile> changed(List<Edit> edits) {
        Set<String> names = new LinkedHashSet<>();
        if (seen.containsKey(seasonName())) {
            names.add(seasonName());
        }
        sources.files().forEach(file -> names.add(file.name()));
        names.addAll(seen.keySet());
        for (String name : names) {
            Optional<TextFile> now = now(name);
            if (now.filter(text -> text.sha256().equals(seen.get(name))).isEmpty()) {
                return Optional.of(new ChangedMeanwhile(name, now.map(TextFile::text), asEdited(name, edits)));
            }
        }
        return Optional.empty();
    }

    private String seasonName() {
        return String.valueOf(sources.path().getFileName());
    }

    /** Empty when it is not there, or cannot be read. */
    private Optional<TextFile> now(String name) {
        return sources.files().stream()
                .filter(file -> file.name().equals(name))
                .findFirst()
                .map(SourceFile::text)
                .or(() -> handedOut
                        .find(name, seen.getOrDefault(name, ""))
                        .flatMap(file -> FileNow.text(file.path(), name)));
    }

    /** What the edits make of the file as it was seen. */
    private Optional<String> asEdited(String name, List<Edit> edits) {
        List<TextFile> texts = new ArrayList<>();
        String first = seasonName();
        for (Map.Entry<String, String> one : seen.entrySet()) {
            Optional<TextFile> text =
                    handedOut.find(one.getKey(), one.getValue()).map(SourceFile::text);
            if (text.isEmpty()) {
                return Optional.empty();
            }
            texts.add(one.getKey().equals(first) ? 0 : texts.size(), text.get());
        }
        try {
            return texts.stream().noneMatch(text -> text.name().equals(first))
                    ? Optional.empty()
                    : all(edited(SeasonText.of(texts), edits), texts)
                            .filter(text -> text.name().equals(name))
                            .map(TextFile::text)
                            .findFirst();
        } catch (FileProblem | Refused e) {
            return Optional.empty();
        }
    }

    /** The edited files, then the others. */
    private static Stream<TextFile> all(SeasonText edited, List<TextFile> others) {
        return Stream.concat(edited.files().stream(), others.stream());
    }

    /**
     * The files that the edits change.
     *
     * @throws Refused when one of them cannot be made
     */
    List<ChangedText> edited(List<Edit> edits) {
        if (sources.files().isEmpty()) {
            throw new Refused(new EditRefusal.NotByPosition(new Problem(
                    seasonName(), OptionalInt.empty(), "", "cannot be read", "check the name and the folder")));
        }
        List<ChangedText> changed = new ArrayList<>();
        for (TextFile after : edited(text(), edits).files()) {
            SourceFile before = sources.files().stream()
                    .filter(file -> file.name().equals(after.name()))
                    .findFirst()
                    .orElseThrow();
            if (!before.text().sha256().equals(after.sha256())) {
                changed.add(new ChangedText(before.path(), before.text(), after));
            }
        }
        return changed;
    }

    private SeasonText text() {
        try {
            return SeasonText.of(sources.files().stream().map(SourceFile::text).toList());
        } catch (FileProblem e) {
            throw new Refused(new EditRefusal.NotByPosition(Problem.of(e)));
        }
    }

    private static SeasonText edited(SeasonText before, List<Edit> edits) {
        SeasonText text = before;
        for (Edit edit : edits) {
            Edited edited = text.with(edit);
            if (edited instanceof Edited.Refused refused) {
                throw new Refused(new EditRefusal.NotByPosition(refused.problem()));
            }
            text = ((Edited.Changed) edited).text();
        }
        return text;
    }
}
