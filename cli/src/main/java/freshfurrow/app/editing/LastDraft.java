package freshfurrow.app.editing;

import freshfurrow.model.edit.SeasonText;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonSources;
import freshfurrow.model.read.SeenMap;
import freshfurrow.model.read.SourceFile;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The draft that was made last, with what it was made of. */
record LastDraft(SeasonSources sources, Draft draft) {
    static LastDraft of(SeasonSources sources) {
        Map<String, String> digests = new LinkedHashMap<>();
        sources.files().forEach(file -> digests.put(file.name(), file.text().sha256()));
        Optional<SeasonText> text = text(sources);
        return new LastDraft(
                sources,
                new Draft(
                        digests,
                        text.map(SeasonText::tree).orElse(Map.of()),
                        text.map(SeasonText::fieldLines).orElse(Map.of()),
                        sources.reading()));
    }

    private static Optional<SeasonText> text(SeasonSources sources) {
        List<TextFile> texts = sources.files().stream().map(SourceFile::text).toList();
        try {
            return texts.isEmpty() ? Optional.empty() : Optional.of(SeasonText.of(texts));
        } catch (FileProblem e) {
            return Optional.empty(); // which is among the problems of the draft
        }
    }

    /**
     * Whether it would be the same if it were made now. A season without a problem was read from all files that it names, so it is the
     * same as long as they are.
     */
    boolean isStillRight() {
        return draft.reading() instanceof Reading.Valid
                && sources.files().stream().allMatch(LastDraft::isUnchanged)
                && sources.maps().stream().allMatch(SeenMap::isUnchanged);
    }

    private static boolean isUnchanged(SourceFile file) {
        return FileNow.text(file.path(), file.name())
                .filter(now -> now.sha256().equals(file.text().sha256()))
                .isPresent();
    }
}
