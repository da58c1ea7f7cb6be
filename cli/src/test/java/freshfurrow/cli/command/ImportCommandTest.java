package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.shapefile.ShpBytes;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

final class ImportCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private record Result(int code, String out, String err) {}

    private Result run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] all = List.of(arguments).stream().map(String::valueOf).toArray(String[]::new);
        PrintWriter printed = new PrintWriter(out);
        PrintWriter said = new PrintWriter(err);
        int code = Freshfurrow.run(printed, said, all);
        return new Result(
                code, out.toString().replace(folder + "/", ""), err.toString().replace(folder + "/", ""));
    }

    private Result answering(String answers, Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Prompts prompts = new Prompts(new BufferedReader(new StringReader(answers)), new PrintWriter(out));
        CommandLine line = new CommandLine(new ImportCommand(Optional.of(prompts)))
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err));
        int code = line.execute(List.of(arguments).stream().map(String::valueOf).toArray(String[]::new));
        return new Result(
                code, out.toString().replace(folder + "/", ""), err.toString().replace(folder + "/", ""));
    }

    private Path table(String text) throws IOException {
        return Files.writeString(folder.resolve("farm.csv"), text);
    }

    @Test
    void aTableWithOtherHeadingsIsUnderstoodAndSaidSo() throws IOException {
        Path farm = table("""
                Field Name;Acres;Planted Crop;Latitude;Longitude;Color
                North forty;1,040.5;corn;41.02;-97.01;blue
                =South;78 ha;soy;40.98;-97.0;red
                """);
        Result result = run("import", farm);

        assertThat(result).isEqualTo(new Result(0, """
                Read: farm.csv, 2 fields
                  Field Name is name
                  Acres is area
                  Planted Crop is crop
                  Latitude is lat
                  Longitude is lon
                  left out: Color
                Written: fields.csv
                Next: put it beside the season file, and name it there: fields: fields.csv
                """, ""));
        assertThat(folder.resolve("fields.csv")).hasContent("""
                id,name,area (ac),lat,lon,crop
                North-forty,North forty,1040.5,41.02,-97.01,corn
                South,South,78 ha,40.98,-97.0,soy
                """);
    }

    @Test
    void whatIsThereIsReplacedOnlyWhenAskedAndNeverTheTableItself() throws IOException {
        Path farm = table("name,acres,crop\nNorth,40,corn\n");
        Files.writeString(folder.resolve("fields.csv"), "mine");

        assertThat(run("import", farm).err()).contains("fields.csv").contains("--force");
        assertThat(folder.resolve("fields.csv")).hasContent("mine");
        assertThat(run("import", farm, "--force").code()).isZero();
        assertThat(run("import", farm, "--out", farm, "--force").code()).isEqualTo(1);
        assertThat(farm).hasContent("name,acres,crop\nNorth,40,corn\n");
    }

    @Test
    void inAPipeNobodyIsAsked() throws IOException {
        Path farm = table("PADDK,EXTENT,WHAT\nNorth,40,corn\n");

        assertThat(run("import", farm))
                .isEqualTo(new Result(
                        1,
                        "",
                        "no column seems to be about the name of fields; say which with --column THEIRS=name; "
                                + "the headings are PADDK, EXTENT, WHAT\n"));
        Result said = run(
                "import",
                farm,
                "--column",
                "paddk=name",
                "--column",
                "EXTENT=area",
                "--column",
                "WHAT=crop",
                "--units",
                "metric");
        assertThat(said.out()).contains("PADDK is name", "EXTENT is area", "no column for: lat, lon");
        assertThat(folder.resolve("fields.csv")).hasContent("id,name,area (ha),lat,lon,crop\nNorth,North,40,,,corn\n");
    }

    @Test
    void onATerminalEachUnclearHeadingIsAskedOnce() throws IOException {
        Path farm = table("PADDK,EXTENT,Y,X,WHAT,HUE\nNorth,40,41.02,-97.01,corn,blue\n");
        Result result = answering("name\nsize?\narea\ncrop\n", farm);

        assertThat(result.out())
                .contains(
                        "What is PADDK, like 'North'? (id, name, area, lat, lon, crop, drainage; Enter if nothing of these)",
                        "  Write one of id, name, area, lat, lon, crop, drainage.",
                        "WHAT is crop",
                        "left out: HUE",
                        "areas without a unit are taken as acres, as the fields lie in North America; --units says otherwise")
                .doesNotContain("What is HUE", "What is Y");
        assertThat(answering("name\n", farm).err()).contains("The answers ended before the last question");
    }

    @Test
    void wrongOptionsAreSaid() throws IOException {
        Path farm = table("name,acres,crop\nNorth,40,corn\n");

        assertThat(run("import", farm, "--column", "size=area").err())
                .isEqualTo("--column: there is no column size; the headings are name, acres, crop\n");
        assertThat(run("import", farm, "--column", "acres=extent").err())
                .isEqualTo("--column: extent is none of id, name, area, lat, lon, crop, drainage, nothing\n");
        assertThat(run("import", folder.resolve("none.csv")).err()).isEqualTo("none.csv: There is no such file.\n");
        assertThat(run("import", folder).err()).endsWith(": That is no ordinary file.\n");
    }

    @Test
    void areasWithoutUnitAndPlaceNeedOneToBeSaid() throws IOException {
        Path farm = table("name,area,crop\nNorth,40,corn\n");

        assertThat(run("import", farm).err()).contains("areas have no unit", "--units us for acres");
        assertThat(run("import", farm, "--units", "metric").code()).isZero();
    }

    @Test
    void wrongCellsAreNamedAndNothingIsWritten() throws IOException {
        Path farm = table("name,acres,lat,lon,crop\nNorth,many,41,-97,corn\nSouth,40,141,-97,corn\n");
        Result result = run("import", farm);

        assertThat(result.code()).isEqualTo(1);
        assertThat(result.err()).contains("fields.csv:2: area: ", "fields.csv:3: lat: ");
        assertThat(folder.resolve("fields.csv")).doesNotExist();
    }

    @Test
    void aShapefileBecomesAMapThatASeasonReads() throws IOException {
        Files.write(folder.resolve("farm.shp"), ShpBytes.polygons(List.of(List.of(ShpBytes.square(-97, 41, 0.005)))));
        Files.write(
                folder.resolve("farm.dbf"), ShpBytes.table(List.of("NAME", "OWNER"), List.of(List.of("North", "us"))));
        Result result = run("import", folder.resolve("farm.shp"), "--crop", "corn");

        assertThat(result.out())
                .contains(
                        "There is no .prj file with it: its coordinates look like degrees",
                        "Of its table, NAME is name; left out: OWNER. Areas and places come from the drawing.",
                        "Written: fields.geojson");
        assertThat(folder.resolve("fields.geojson"))
                .content()
                .contains("\"id\":\"North\",\"name\":\"North\",\"crop\":\"corn\"");
        assertThat(run("import", folder.resolve("farm.dbf")).err())
                .isEqualTo("farm.dbf: That is a part of a shapefile. Name the .shp file beside it.\n");
    }

    @Test
    void aMapThatCrossesItselfIsRefused() throws IOException {
        Path map = Files.writeString(
                folder.resolve("bow.geojson"),
                "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"name\":\"Bow\"},\"geometry\":"
                        + "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[0.01,0.01],[0.01,0],[0,0.01],[0,0]]]}}]}");

        assertThat(run("import", map, "--crop", "corn").code()).isEqualTo(1);
        assertThat(folder.resolve("fields.geojson")).doesNotExist();
    }
}
