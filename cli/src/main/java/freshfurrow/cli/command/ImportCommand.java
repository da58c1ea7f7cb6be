package freshfurrow.cli.command;

import freshfurrow.app.begin.FieldsText;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.Surroundings;
import freshfurrow.app.begin.UnitSystem;
import freshfurrow.app.begin.UnusableMap;
import freshfurrow.app.imports.FieldImport;
import freshfurrow.app.imports.FieldPaths;
import freshfurrow.app.imports.ImportedFile;
import freshfurrow.app.imports.TableColumns;
import freshfurrow.cli.text.Figures;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "import",
        header = "Read fields in from a map or a table of another program.",
        description =
                "%nMaps are shapefiles (.shp, or a zip of one), KML, KMZ and GeoJSON; tables are CSV files with any headings. Says what it takes for what, and writes fields.geojson or fields.csv beside FILE, for a season file to name. On a terminal it asks what columns are about whose headings say nothing; elsewhere --column says so. A file that is there already is not replaced unless --force is given.%n",
        footer = {
            "  freshfurrow import farm.shp --crop corn",
            "  freshfurrow import farm.csv --column PADDK=name --units us"
        })
final class ImportCommand implements Callable<Integer> {
    private final Optional<Prompts> given;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", index = "0", description = "map or table of fields")
    private Path file = Path.of("");

    @Option(
            names = "--column",
            paramLabel = "THEIRS=OURS",
            description =
                    "what the column with that heading is about: id, name, area, lat, lon, crop, drainage or nothing; may be repeated")
    private Map<String, String> columns = new LinkedHashMap<>();

    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            converter = UnitSystemConverter.class,
            description = "areas without a unit are in acres (us) or hectares (metric)")
    private Optional<UnitSystem> units = Optional.empty();

    @Option(names = "--crop", paramLabel = "ID", description = "crop of fields that name none")
    private Optional<String> crop = Optional.empty();

    @Option(names = "--out", paramLabel = "FILE", description = "file to write; default: beside FILE")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--force", description = "replace a file that is there, but never FILE itself")
    private boolean force;

    ImportCommand() {
        this(Optional.empty());
    }

    /** Asks somebody else than a terminal. */
    ImportCommand(Optional<Prompts> given) {
        this.given = given;
    }

    @Override
    public Integer call() {
        try {
            FieldImport.Held held = FieldImport.read(FieldPaths.read(file));
            List<String> said = new ArrayList<>(held.said());
            GivenFields fields;
            if (held instanceof FieldImport.Tabular tabular) {
                Optional<GivenFields> read =
                        new ColumnQuestions(prompts(), spec).fields(new TableColumns(tabular.table()), columns, said);
                if (read.isEmpty()) {
                    return Freshfurrow.PROBLEM;
                }
                fields = read.get();
            } else {
                fields = ((FieldImport.Drawn) held).fields();
            }
            return write(fields, said);
        } catch (UnusableMap e) {
            Output.warn(spec, file + ": " + e.reason());
            return Freshfurrow.PROBLEM;
        } catch (Prompts.EndOfInput e) {
            Output.warn(spec, "The answers ended before the last question, so nothing was written.");
            return Freshfurrow.PROBLEM;
        }
    }

    private int write(GivenFields fields, List<String> said) {
        Optional<UnitSystem> system = units.or(
                () -> FieldsText.lacksUnits(fields) ? AreaUnits.guessed(fields, said) : Optional.of(UnitSystem.US));
        if (system.isEmpty()) {
            Output.warn(
                    spec,
                    file
                            + ": areas have no unit, and where the fields are does not tell; add --units us for acres or --units metric for hectares");
            return Freshfurrow.PROBLEM;
        }
        Surroundings here = new Surroundings(LocalDate.now(ZoneId.systemDefault()), ZoneId.systemDefault());
        FieldsText text = FieldsText.of(fields, system.get(), crop, here);
        Path written = ImportedFile.write(text, file, out, force);
        List<String> lines = new ArrayList<>(
                List.of("Read: " + file + ", " + Figures.count(text.rows().size(), "field", "fields")));
        said.forEach(line -> lines.add("  " + line));
        lines.add("Written: " + written);
        if (text.rows().stream().anyMatch(row -> row.crop().isBlank())) {
            lines.add("Fields without a crop are not ready for a season: add --crop, or write it in.");
        }
        lines.add("Next: put it beside the season file, and name it there: fields: " + written.getFileName());
        Output.print(spec, lines);
        return Freshfurrow.OK;
    }

    /** On a terminal only: in a pipe nobody answers. */
    private Optional<Prompts> prompts() {
        return given.or(() -> Optional.ofNullable(System.console())
                .map(console ->
                        new Prompts(BeginCommand.input(), spec.commandLine().getOut())));
    }
}
