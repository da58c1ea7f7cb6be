package freshfurrow.model.edit;

import freshfurrow.model.read.Problem;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The text of a season: its own file, and the file of its fields where they have one. */
public final class SeasonText {
    private static final String FIELDS = "fields";
    private static final String FIXED = "fixed";

    private final TreeText season;
    private final Optional<FieldsText> fields;
    /** Why the file of the fields cannot be edited, where that is so. */
    private final Optional<FileProblem> wrongFields;

    private SeasonText(TreeText season, Optional<FieldsText> fields, Optional<FileProblem> wrongFields) {
        this.season = season;
        this.fields = fields;
        this.wrongFields = wrongFields;
    }

    /**
     * A season's text.
     *
     * @param files the season file first, then those that it names, as far as they could be read
     * @throws FileProblem when the season file is no tree
     */
    public static SeasonText of(List<TextFile> files) throws FileProblem {
        return of(TreeText.yaml(files.get(0)), files.subList(1, files.size()));
    }

    private static SeasonText of(TreeText season, List<TextFile> others) {
        if (!(Trees.at(season.tree(), List.of(FIELDS)).orElse(season.tree()) instanceof Node.Text name)) {
            return new SeasonText(season, Optional.empty(), Optional.empty());
        }
        Optional<TextFile> its =
                others.stream().filter(file -> file.name().equals(name.text())).findFirst();
        if (its.isEmpty()) {
            return new SeasonText(season, Optional.empty(), Optional.of(unread(name)));
        }
        try {
            return new SeasonText(season, Optional.of(FieldsText.of(its.get())), Optional.empty());
        } catch (FileProblem e) {
            return new SeasonText(season, Optional.empty(), Optional.of(e));
        }
    }

    private static FileProblem unread(Node.Text name) {
        Place place = new Place(name.place().file(), name.place().line(), FIELDS);
        return new FileProblem(place, "'" + name.text() + "' cannot be read", "name a file of fields that is there");
    }

    /** The season file, and the file of the fields if it can be edited. */
    public List<TextFile> files() {
        List<TextFile> files = new ArrayList<>(List.of(season.file()));
        fields.ifPresent(its -> files.add(its.file()));
        return files;
    }

    /**
     * All that is written, by key: maps, lists and texts as they are read. Fields that have a file of their own are under {@code fields}
     * by id, of features with their geometry. Keys with no value are left out.
     */
    public Map<String, Object> tree() {
        return Plain.map(joined());
    }

    /** In which line of their own file fields stand, by id, as problems of a table name lines rather than fields. */
    public Map<String, Integer> fieldLines() {
        Map<String, Integer> lines = new LinkedHashMap<>();
        fields.ifPresent(its -> its.tree()
                .entries()
                .forEach((id, field) -> lines.put(id, field.place().line())));
        return lines;
    }

    private Node joined() {
        if (fields.isEmpty() || !(season.tree() instanceof Node.Mapping map)) {
            return season.tree();
        }
        Map<String, Node> entries = new LinkedHashMap<>(map.entries());
        entries.put(FIELDS, fields.get().tree());
        return new Node.Mapping(map.place(), entries);
    }

    /** The season with an edit, read again and found to say what was meant; or why it cannot be edited so. */
    public Edited with(Edit edit) {
        SeasonText text = this;
        try {
            if (edit.path().isEmpty()) {
                throw new FileProblem(new Place(season.file().name(), 0, ""), "is the whole season", "edit its parts");
            }
            for (Edit step : SmallSteps.of(isOfFields(edit) ? joined() : season.tree(), whole(edit))) {
                text = text.step(step);
            }
            return new Edited.Changed(text);
        } catch (FileProblem e) {
            return new Edited.Refused(Problem.of(e));
        }
    }

    /** Whether it is for the file of the fields. */
    private boolean isOfFields(Edit edit) {
        return edit.path().size() > 1
                && edit.path().get(0).equals(FIELDS)
                && (fields.isPresent() || wrongFields.isPresent());
    }

    /** Who takes out the last that is fixed of a field no longer fixes anything of it. */
    private Edit whole(Edit edit) {
        List<String> path = edit.path();
        boolean last = edit instanceof Edit.Remove
                && path.size() == 3
                && path.get(0).equals(FIXED)
                && Trees.at(season.tree(), path).isPresent()
                && Trees.at(season.tree(), path.subList(0, 2)).orElseThrow() instanceof Node.Mapping fixed
                && fixed.entries().size() == 1;
        return last ? new Edit.Remove(path.subList(0, 2)) : edit;
    }

    private SeasonText step(Edit step) throws FileProblem {
        if (!isOfFields(step)) {
            TreeText changed = season.with(step);
            return step.path().get(0).equals(FIELDS)
                    ? of(changed, fields.map(FieldsText::file).stream().toList())
                    : new SeasonText(changed, fields, wrongFields);
        }
        if (wrongFields.isPresent()) {
            throw wrongFields.get();
        }
        FieldsText its = fields.orElseThrow()
                .with(step.at(step.path().subList(1, step.path().size())));
        return new SeasonText(season, Optional.of(its), Optional.empty());
    }
}
