package freshfurrow.cli.e2e;

import static freshfurrow.cli.e2e.MistakesIT.assertNoTrace;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets, calendar, tables and map from a plan on disk. */
final class ExportIT {
    private static final List<String> FILES =
            List.of("plan.ics", "fields.csv", "loads.csv", "batches.csv", "plan.geojson");

    @TempDir
    private Path folder = Path.of("");

    private Path plan = Path.of("");

    @BeforeEach
    void makePlan() throws Exception {
        plan = folder.resolve("plan");
        assertThat(InProcess.run("plan", SeasonOnDisk.in(folder).toString(), "--steps", "0")
                        .exitCode())
                .isZero();
    }

    @Test
    void sheetsAreWrittenBesideThePlanAndNotOverAnything() throws Exception {
        Launcher.Result sheets = InProcess.run("sheets", plan.toString());
        assertThat(sheets.err()).isEmpty();
        assertThat(sheets.exitCode()).isZero();
        Path file = plan.resolve("sheets.html");
        assertThat(sheets.out()).contains("sheets written to " + file);
        assertThat(file)
                .content()
                .startsWith("<!DOCTYPE html>")
                .endsWith("</html>\n")
                .contains("Rig <bdi>R1</bdi>", "Planter <bdi>P1</bdi>", "N40 North", "30 lb (1 bucket) in ");

        Files.writeString(file, "mine");
        Launcher.Result refused = InProcess.run("sheets", plan.toString());
        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err()).contains("exists already, so nothing was written", "--force");
        assertThat(file).hasContent("mine");
        assertThat(InProcess.run("sheets", plan.toString(), "--force").exitCode())
                .isZero();
        assertThat(file).content().startsWith("<!DOCTYPE html>");
    }

    @Test
    void sheetsOfOneDayAreOfThatDay() throws Exception {
        Path file = folder.resolve("tuesday.html");
        Launcher.Result sheets =
                InProcess.run("sheets", plan.toString(), "--day", "2027-04-20", "--out", file.toString());
        assertThat(sheets.exitCode()).isZero();
        assertThat(file).content().contains("Tuesday, April 20, 2027").doesNotContain("Wednesday");

        Launcher.Result outside = InProcess.run("sheets", plan.toString(), "--day", "2027-06-01");
        assertThat(outside.exitCode()).isEqualTo(1);
        assertThat(outside.err()).contains("no work on 2027-06-01; it runs from 2027-04-");
    }

    @Test
    void everythingIsExportedBesideThePlanTheSameEveryTime() throws Exception {
        Launcher.Result export = InProcess.run("export", plan.toString());
        assertThat(export.err()).isEmpty();
        assertThat(export.exitCode()).isZero();
        assertThat(FILES).allSatisfy(name -> assertThat(plan.resolve(name)).isNotEmptyFile());
        assertThat(plan.resolve("plan.ics"))
                .content()
                .contains("DTSTART;TZID=America/Chicago:20270420T", "TZID:America/Chicago");
        assertThat(plan.resolve("fields.csv")).content().contains("area (ac)", "N40,North,corn,standard,42,");
        assertThat(plan.resolve("plan.geojson")).content().contains("[-97.01,41.02]", "\"name\":\"North\"");

        Path again = folder.resolve("again");
        InProcess.run("export", plan.toString(), "--out", again.toString());
        assertThat(FILES)
                .allSatisfy(name -> assertThat(again.resolve(name)).hasSameBinaryContentAs(plan.resolve(name)));
        InProcess.run("export", plan.toString(), "--out", again.toString(), "--force");
        assertThat(again.resolve("plan.ics")).hasSameBinaryContentAs(plan.resolve("plan.ics"));
    }

    @Test
    void nothingIsExportedOverWhatIsThere() throws Exception {
        Path mine = Files.writeString(plan.resolve("loads.csv"), "mine");
        Launcher.Result export = InProcess.run("export", plan.toString());
        assertThat(export.exitCode()).isEqualTo(1);
        assertThat(export.err()).contains("loads.csv: exists already");
        assertThat(mine).hasContent("mine");
        assertThat(plan.resolve("plan.ics")).doesNotExist();
    }

    @Test
    void onlyWhatIsAskedForIsExported() throws Exception {
        Launcher.Result export = InProcess.run("export", plan.toString(), "--only", "map,calendar");
        assertThat(export.exitCode()).isZero();
        assertThat(plan.resolve("plan.geojson")).exists();
        assertThat(plan.resolve("plan.ics")).exists();
        assertThat(plan.resolve("fields.csv")).doesNotExist();
        assertThat(InProcess.run("export", plan.toString(), "--only", "photos").exitCode())
                .isEqualTo(2);
    }

    @Test
    void aReplanUpdatesTheCalendarOfThePlanBefore() throws Exception {
        InProcess.run("export", plan.toString(), "--only", "calendar");
        String first = Files.readString(plan.resolve("plan.ics"));
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("transferRate: 60", "transferRate: 50"));
        InProcess.run("plan", folder.toString(), "--steps", "0", "--force");
        InProcess.run("export", plan.toString(), "--only", "calendar", "--force");
        String second = Files.readString(plan.resolve("plan.ics"));
        assertThat(second).contains("SEQUENCE:1").isNotEqualTo(first);
        assertThat(second.lines().filter(line -> line.startsWith("UID:")))
                .containsAll(
                        first.lines().filter(line -> line.startsWith("UID:")).toList());
    }

    @Test
    void aCalendarOfSomeoneElseIsNotReplacedEvenWhenForced() throws Exception {
        Path mine = Files.writeString(
                plan.resolve("plan.ics"), "BEGIN:VCALENDAR\r\nPRODID:x\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n");
        Launcher.Result export = InProcess.run("export", plan.toString(), "--force");
        assertThat(export.exitCode()).isEqualTo(1);
        assertThat(export.err()).contains("plan.ics: is not a calendar of a plan, so it is not replaced");
        assertThat(mine).content().contains("PRODID:x");
        assertNoTrace(export);
    }

    @Test
    void anotherSeasonThanThePlansIsRefusedInOneLine() throws Exception {
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file) + "# a remark\n");
        Launcher.Result export = InProcess.run("export", plan.toString());
        assertThat(export.exitCode()).isEqualTo(1);
        assertThat(export.err().lines()).hasSize(1);
        assertThat(export.err()).contains("season.yaml: this is not what", "make a new plan");
        assertNoTrace(export);
    }

    @Test
    void aSeasonThatIsNotThereIsAskedFor() throws Exception {
        Path far = Files.createDirectories(folder.resolve("far").resolve("away"));
        Files.copy(plan.resolve("plan.json"), far.resolve("plan.json"));
        Launcher.Result export = InProcess.run("export", far.toString());
        assertThat(export.exitCode()).isEqualTo(1);
        assertThat(export.err()).contains("its season is missing", "--season SEASON");
        assertThat(InProcess.run("export", far.toString(), "--season", folder.toString())
                        .exitCode())
                .isZero();
    }
}
