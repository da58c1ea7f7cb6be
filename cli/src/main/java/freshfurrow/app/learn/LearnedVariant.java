package freshfurrow.app.learn;

import freshfurrow.app.output.OutFiles;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.read.tree.TextFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A variant of a season, with what differs by its log from the season file by more than chance. */
public final class LearnedVariant {
    private LearnedVariant() {}

    /**
     * Writes it.
     *
     * @param force whether a file that is there is replaced
     * @throws Refused when nothing differs, when the season with those values cannot be used, or when the file is there unasked or
     *     cannot be written; then nothing is
     */
    public static void write(Learned learned, Path file, boolean force) {
        OutFiles.MADE.refuseObstructed(List.of(file), IfThere.replaceIf(force));
        if (learned.values().isEmpty()) {
            throw new Refused(new LogRefusal.NothingLearned(file));
        }
        String text = text(learned);
        Reading reading = SeasonFiles.read(
                learned.given().path(),
                learned.given().variants(),
                TextFile.of(String.valueOf(file.getFileName()), text));
        if (reading instanceof Reading.Invalid invalid) {
            throw new Refused(new InputRefusal.ProblemsFound(invalid.problems()));
        }
        OutFiles.MADE.writeAll(List.of(NewFile.of(file, text, IfThere.replaceIf(force))));
    }

    /** In YAML, a line for each machine. */
    static String text(Learned learned) {
        Map<String, Map<String, List<String>>> parts = new LinkedHashMap<>();
        for (LearnedValue value : learned.values()) {
            int last = value.path().size() - 1;
            parts.computeIfAbsent(value.path().get(0), part -> new LinkedHashMap<>())
                    .computeIfAbsent(String.join("", value.path().subList(1, last)), id -> new ArrayList<>())
                    .add(value.path().get(last) + ": " + value.text());
        }
        StringBuilder text = new StringBuilder(
                "# By the log of this season, where it differs from the season file by more than chance.\n");
        parts.forEach((part, byId) -> {
            text.append(part).append(":");
            byId.forEach((id, values) -> text.append(id.isEmpty() ? " " : "\n  " + id + ": ")
                    .append(values.stream().collect(Collectors.joining(", ", "{", "}"))));
            text.append('\n');
        });
        return text.toString();
    }
}
