package freshfurrow.app.begin;

import freshfurrow.model.read.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A file of fields as a season file can name it.
 *
 * @param name what it is usually called
 * @param text what it holds
 * @param rows the fields as they stand in it
 * @param problems what is wrong with it, but for what is missing
 */
public record FieldsText(String name, String text, List<FieldRow> rows, List<Problem> problems) {
    public FieldsText {
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
    }

    /**
     * The file of some fields.
     *
     * @param units of areas that have none
     * @param crop of the fields that name none
     */
    public static FieldsText of(GivenFields fields, UnitSystem units, Optional<String> crop, Surroundings here) {
        List<FieldRow> given = fields.rows().stream()
                .map(row -> crop.isPresent() && row.crop().isBlank() ? row.withCrop(crop.get()) : row)
                .toList();
        Names.Taken taken = new Names.Taken();
        List<FieldRow> rows = NamedFields.of(given, taken, CropIds.of(given));
        FieldsFile file = FieldsFile.of(rows, fields.shapes(), units);
        Map<Section, List<Entry>> elsewhere = Map.of(
                Section.PLACES, List.of(new Entry(taken.free("yard"), Map.of("at", "0,0"))),
                Section.WATER, List.of(new Entry(taken.free("well"), Map.of())));
        NewSeason season =
                NewSeason.of(new Answers(units, elsewhere, new GivenFields(given, fields.shapes()), false), file, here);
        List<Problem> problems = season.problems().stream()
                .filter(problem -> problem.file().equals(season.fieldsName()))
                .filter(problem ->
                        !problem.path().endsWith("crop") && !problem.reason().equals("is missing"))
                .toList();
        return new FieldsText(file.name(), file.text(), rows, problems);
    }

    /** Drawn fields as a map of GeoJSON, as they were given: {@link DrawnFields} reads the same out of it. */
    public static String map(GivenFields drawn) {
        return FieldsFile.map(drawn.rows(), drawn.shapes().orElseThrow());
    }

    /** Whether some areas of a table have no unit of their own. */
    public static boolean lacksUnits(GivenFields fields) {
        return fields.shapes().isEmpty()
                && fields.rows().stream().anyMatch(row -> row.area().matches("[\\s0-9.,']+"));
    }
}
