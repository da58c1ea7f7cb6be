package freshfurrow.app.begin;

import freshfurrow.model.read.Problem;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.read.tree.TextFile;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The files of a season that is begun, which are on no disk yet.
 *
 * @param text of the season file
 * @param fieldsName name of the file of the fields
 * @param fieldsText what that one holds
 * @param rows the fields as they stand in it
 * @param missing what nobody answered and nothing can be taken for
 * @param problems all that is wrong with it or missing; none when the season is right
 * @param unusable those of them that are wrong with answers that were given
 * @param reading the season as it will be read
 */
public record NewSeason(
        String text,
        String fieldsName,
        String fieldsText,
        List<FieldRow> rows,
        List<String> missing,
        List<Problem> problems,
        List<Problem> unusable,
        Reading reading) {
    /** In tables and maps alike: each field has a line of its own below the first. */
    private static final int FIRST_FIELD_LINE = 2;

    /** What the season file is called, where nobody gave it a name. */
    public static final String FILE_NAME = "season.yaml";

    public NewSeason {
        rows = List.copyOf(rows);
        missing = List.copyOf(missing);
        problems = List.copyOf(problems);
        unusable = List.copyOf(unusable);
    }

    /** The season that answers make. */
    public static NewSeason of(Answers answers, Surroundings here) {
        EntryIds ids = EntryIds.of(answers);
        Names.Taken taken = new Names.Taken();
        ids.of(Section.PLACES).keySet().forEach(taken::free);
        ids.of(Section.WATER).keySet().forEach(taken::free);
        List<FieldRow> rows = NamedFields.of(answers.fields().rows(), taken, CropIds.of(answers));
        return of(answers, FieldsFile.of(rows, answers.fields().shapes(), answers.units()), here);
    }

    /** @param fields the file of the fields of the answers, in which they have ids */
    static NewSeason of(Answers answers, FieldsFile fields, Surroundings here) {
        CropIds crops = CropIds.of(answers);
        EntryIds ids = EntryIds.of(answers);
        Map<Section, Map<String, Entry>> entries = new EnumMap<>(Section.class);
        for (Section section : Section.values()) {
            entries.put(section, section == Section.CROPS ? crops(crops, answers.of(section)) : ids.of(section));
        }
        String text = new SeasonWriter(answers, Defaults.of(answers, here), entries, fields).text();
        Reading reading =
                SeasonFiles.read(TextFile.of(FILE_NAME, text), List.of(TextFile.of(fields.name(), fields.text())));
        List<Problem> problems =
                Stream.concat(ids.twice().stream(), problems(reading).stream()).toList();
        return new NewSeason(
                text,
                fields.name(),
                fields.text(),
                fields.rows(),
                Missing.of(entries, fields.rows(), answers),
                problems,
                unusable(problems, entries.get(Section.CROPS), fields.rows()),
                reading);
    }

    /**
     * The id that each crop has in the file, by its name: crops that were answered, those that fields name, or an invented one where
     * there is none.
     */
    public static Map<String, String> cropIds(Answers answers) {
        return CropIds.of(answers).byName();
    }

    /** The ids that the things of a section but crops have in the file, in the order in which they were answered. */
    public static List<String> ids(Answers answers, Section section) {
        return List.copyOf(EntryIds.of(answers).of(section).keySet());
    }

    private static List<Problem> problems(Reading reading) {
        return reading instanceof Reading.Invalid invalid ? invalid.problems() : List.of();
    }

    private static List<Problem> unusable(List<Problem> problems, Map<String, Entry> crops, List<FieldRow> rows) {
        Question window = Section.CROPS.questions().get(0);
        Set<String> missing = crops.entrySet().stream()
                .filter(crop -> Missing.lackedEnd(crop.getValue()).isPresent())
                .map(crop -> Section.CROPS.path(crop.getKey(), window))
                .collect(Collectors.toCollection(HashSet::new));
        if (rows.isEmpty()) {
            missing.add("fields");
        }
        return problems.stream()
                .filter(problem -> !problem.isOfMissing() && !missing.contains(problem.path()))
                .toList();
    }

    /** The field that a problem is about; empty when it is about no single one. */
    public Optional<FieldRow> fieldOf(Problem problem) {
        int row = problem.line().orElse(0) - FIRST_FIELD_LINE;
        return problem.file().equals(fieldsName) && row >= 0 && row < rows.size()
                ? Optional.of(rows.get(row))
                : Optional.empty();
    }

    /** What is wrong with the name of a thing, as another has it. */
    public List<Problem> problemsOfName(Section section, String id) {
        return problems.stream()
                .filter(problem -> problem.path().equals(section.key() + "." + id))
                .toList();
    }

    /** What is wrong with an answer, or with a value at that path of the season file. */
    public List<Problem> problemsAt(String path) {
        return problems.stream()
                .filter(problem -> problem.file().equals(FILE_NAME))
                .filter(problem -> problem.path().equals(path) || problem.path().startsWith(path + "."))
                .toList();
    }

    /**
     * What is wrong with a cell of the table of fields.
     *
     * @param row from 0
     */
    public List<Problem> problemsOf(int row, Heading column) {
        return problems.stream()
                .filter(problem -> problem.file().equals(fieldsName)
                        && problem.line().orElse(0) == row + FIRST_FIELD_LINE
                        && problem.path().equals(column.key()))
                .toList();
    }

    /** Of two spellings of a crop the first answer counts. */
    private static Map<String, Entry> crops(CropIds crops, List<Entry> given) {
        Map<String, Entry> named = new LinkedHashMap<>();
        given.stream()
                .filter(entry -> !crops.id(entry.id()).isEmpty())
                .forEach(entry -> named.putIfAbsent(crops.id(entry.id()), entry));
        crops.ids().forEach(id -> named.putIfAbsent(id, new Entry(id, Map.of())));
        return named;
    }
}
