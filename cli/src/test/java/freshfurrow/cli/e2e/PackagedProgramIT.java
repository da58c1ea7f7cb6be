package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** The application's folder, with a Java of its own. */
@EnabledIfSystemProperty(
        named = "packages",
        matches = ".*",
        disabledReason = "making packages takes minutes: -Dpackages")
final class PackagedProgramIT {
    /** A whole Java takes them up where they are: other languages, as all that is printed is English, and recordings of itself. */
    private static final Set<String> NOT_NEEDED = Set.of("jdk.localedata", "jdk.management.jfr");

    @TempDir
    private Path folder = Path.of("");

    /** Whatever its Java lacks, a command would miss. */
    @Test
    void everyCommandDoesTheSameWithItsOwnJava() throws Exception {
        Path program = MadePackages.application().resolve("bin/freshfurrow");

        Map<String, String> packaged = EveryCommand.printedAndWritten(
                (printed, arguments) -> Launcher.runIn(folder, program, printed, arguments),
                folder.resolve("packaged"));

        Map<String, String> here = EveryCommand.printedAndWritten(InProcess::run, folder.resolve("here"));
        assertThat(packaged).containsOnlyKeys(here.keySet());
        here.forEach((what, text) -> assertThat(packaged.get(what)).as(what).isEqualTo(text));
    }

    /** A whole Java may serve a plan by a module that no class of the program names, as the one that opens zip files as folders. */
    @Test
    void allModulesThatAWholeJavaServesAPlanFromAreInItsOwn() throws Exception {
        Path log = folder.resolve("classes.log");
        Launcher.Result planned = MadePackages.java(
                folder,
                "-Xlog:class+load:file=" + log,
                "-jar",
                Launcher.jar().toString(),
                "plan",
                Launcher.scenario("first-season"),
                "--steps",
                "50",
                "--out",
                folder.resolve("plan").toString());
        assertThat(planned.exitCode()).as(planned.all()).isZero();

        Set<String> served;
        try (Stream<String> lines = Files.lines(log)) {
            served = lines.filter(line -> line.contains(" source: jrt:/"))
                    .map(line -> line.replaceFirst(".* source: jrt:/", "").strip())
                    .collect(Collectors.toCollection(TreeSet::new));
        }
        served.removeAll(NOT_NEEDED);
        assertThat(served).contains("java.base");
        assertThat(modules()).containsAll(served);
    }

    private static List<String> modules() throws IOException {
        try (Stream<String> lines = Files.lines(MadePackages.application().resolve("lib/runtime/release"))) {
            String named = lines.filter(line -> line.startsWith("MODULES="))
                    .findFirst()
                    .orElseThrow();
            return List.of(named.replaceFirst("MODULES=\"(.*)\"", "$1").split(" ", -1));
        }
    }

    @Test
    void everyLibraryInTheProgramIsListedWithItsLicense() throws Exception {
        Path app = MadePackages.application().resolve("lib/app");
        JsonNode parts = new ObjectMapper()
                .readTree(app.resolve("freshfurrow.cdx.json").toFile())
                .get("components");
        String texts = Files.readString(app.resolve("third-party.txt"));

        for (JsonNode part : parts) {
            assertThat(Stream.of("id", "name", "expression")
                            .flatMap(key -> part.path("licenses").findValuesAsText(key).stream()))
                    .as("licenses of " + part.get("name"))
                    .isNotEmpty();
            if (part.get("purl") != null && !part.get("group").asText().equals("freshfurrow")) {
                assertThat(texts)
                        .contains("\n" + part.get("group").asText() + ":"
                                + part.get("name").asText() + " "
                                + part.get("version").asText() + ": ");
            }
        }
        List<String> listed = StreamSupport.stream(parts.spliterator(), false)
                .map(part ->
                        part.get("name").asText() + "-" + part.get("version").asText() + ".jar")
                .toList();
        Collection<String> inside = librariesIn(app.resolve("freshfurrow.jar"));
        assertThat(inside).hasSizeGreaterThan(30).isSubsetOf(listed);
        assertThat(parts.findValuesAsText("name")).contains("d3", "Java runtime");
        assertThat(app.resolveSibling("runtime").resolve("legal/java.base/LICENSE"))
                .isNotEmptyFile();
    }

    /** Of all libraries that these tests are run with, those whose classes are in the jar. */
    private static Collection<String> librariesIn(Path jar) throws IOException {
        Set<String> inside = new TreeSet<>();
        try (JarFile program = new JarFile(jar.toFile())) {
            for (String path : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
                if (path.endsWith(".jar")
                        && !Path.of(path).getFileName().toString().startsWith("freshfurrow-")) {
                    try (JarFile library = new JarFile(path)) {
                        Optional<? extends ZipEntry> any = Collections.list(library.entries()).stream()
                                .filter(entry -> entry.getName().endsWith(".class"))
                                .filter(entry -> !entry.getName().contains("-info.class"))
                                .filter(entry -> !entry.getName().startsWith("META-INF/"))
                                .findFirst();
                        if (any.isPresent() && program.getEntry(any.get().getName()) != null) {
                            inside.add(Path.of(path).getFileName().toString());
                        }
                    }
                }
            }
        }
        return inside;
    }

    @Test
    void aLibraryWithoutALicenseOrItsTextIsRefused() throws Exception {
        MadePackages.application();
        Path project = Files.createDirectories(folder.resolve("project"));
        Path built = Files.createDirectories(project.resolve("cli/target"));
        String parts = Files.readString(Launcher.projectFolder().resolve("cli/target/freshfurrow.cdx.xml"));
        String start = "<name>picocli</name>";
        assertThat(parts).contains(start, "<name>ojalgo</name>");
        int licenses = parts.indexOf("<licenses>", parts.indexOf(start));
        Files.writeString(
                built.resolve("freshfurrow.cdx.xml"),
                parts.substring(0, licenses)
                        + parts.substring(parts.indexOf("</licenses>", licenses) + "</licenses>".length()));
        Files.copy(
                Launcher.projectFolder().resolve("cli/target/freshfurrow.cdx.json"),
                built.resolve("freshfurrow.cdx.json"),
                StandardCopyOption.REPLACE_EXISTING);

        Launcher.Result written = MadePackages.java(
                project,
                Launcher.projectFolder().resolve("packages/Notices.java").toString(),
                project.toString());

        assertThat(written.exitCode()).isEqualTo(1);
        assertThat(written.err())
                .containsPattern("info.picocli:picocli \\S+ has no license in its pom")
                .containsPattern("org.ojalgo:ojalgo \\S+ \\(MIT\\) came without the text of its license; write it");
    }
}
