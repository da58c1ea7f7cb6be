package freshfurrow.app.begin;

import freshfurrow.model.read.Problem;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.read.tree.TextFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The files of a season that is begun, which are on no disk yet.
 *
 * @param text of the season file
 * @param fieldsName name of the file of the fields
 * @param fieldsText what that one holds
 * @param missing what nobody answered and nothing can be taken for
 * @param reading the season as it will be read, or all that is wrong with it or missing
 */
public record NewSeason(String text, String fieldsName, String fieldsText, List<String> missing, Reading reading) {
    /** What the season file is called, where nobody gave it a name. */
    public static final String FILE_NAME = "season.yaml";

    public NewSeason {
        missing = List.copyOf(missing);
    }

    /** The season that answers make. */
    public static NewSeason of(Answers answers, Surroundings here) {
        Map<Section, Map<String, Entry>> entries = new LinkedHashMap<>();
        for (Section section : Section.values()) {
            entries.put(section, named(section, answers.of(section)));
        }
        Names.Taken taken = new Names.Taken();
        entries.get(Section.PLACES).keySet().forEach(taken::free);
        entries.get(Section.WATER).keySet().forEach(taken::free);
        List<String> crops = crops(answers);
        crops.forEach(crop -> entries.get(Section.CROPS).putIfAbsent(crop, new Entry(crop, Map.of())));
        List<FieldRow> rows = NamedFields.of(answers.fields().rows(), taken, crops);
        FieldsFile fields = FieldsFile.of(rows, answers.fields().shapes(), answers.units());
        List<String> missing = new ArrayList<>(Missing.of(entries, rows, answers));
        String text = new SeasonWriter(answers, Defaults.of(answers, here), entries, fields).text();
        Reading reading =
                SeasonFiles.read(TextFile.of(FILE_NAME, text), List.of(TextFile.of(fields.name(), fields.text())));
        return new NewSeason(text, fields.name(), fields.text(), missing, reading);
    }

    /** Ids of the crops: those that were answered, those that fields name, or an invented one where there is none. */
    public static List<String> crops(Answers answers) {
        List<String> crops = new ArrayList<>();
        Stream.concat(
                        answers.of(Section.CROPS).stream().map(entry -> Names.id(entry.id())),
                        NamedFields.crops(answers.fields().rows()).stream())
                .filter(crop -> !crop.isEmpty() && crops.stream().noneMatch(crop::equalsIgnoreCase))
                .forEach(crops::add);
        return crops.isEmpty() ? List.of(answers.units() == UnitSystem.US ? "corn" : "maize") : crops;
    }

    /** None when the season is right. */
    public List<Problem> problems() {
        return reading instanceof Reading.Invalid invalid ? invalid.problems() : List.of();
    }

    /** What is wrong with an answer, or with a value at that path of the season file. */
    public List<Problem> problemsAt(String path) {
        return problems().stream()
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
        return problems().stream()
                .filter(problem -> problem.file().equals(fieldsName)
                        && problem.line().orElse(0) == row + 2
                        && problem.path().equals(column.key()))
                .toList();
    }

    private static Map<String, Entry> named(Section section, List<Entry> given) {
        Names.Taken taken = new Names.Taken();
        Map<String, Entry> named = new LinkedHashMap<>();
        for (Entry entry : given) {
            String id = Names.id(entry.id());
            if (section == Section.CROPS && named.keySet().stream().anyMatch(id::equalsIgnoreCase)) {
                continue; // another spelling of the same crop
            }
            String own = id.isEmpty() ? section.usualId() : id;
            named.put(taken.free(own.isEmpty() ? section.key() : own), entry);
        }
        return named;
    }
}
