package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The first starts after a clone, with a stand-in for Maven that copies a small jar, half of it a second after the other; how long a
 * real build takes is for {@code TwoFirstStartsBenchmark}.
 */
final class FirstStartIT {
    @TempDir
    private Path folder = Path.of("");

    private Path clone = Path.of("");
    private Path jar = Path.of("");

    @BeforeEach
    void cloneWithAStandInForMaven() throws IOException {
        clone = Files.createDirectory(folder.resolve("clone"));
        for (String name : List.of(
                "freshfurrow", "pom.xml", "launcher/Build.java", "launcher/Archive.java", "launcher/java.options")) {
            Path to = clone.resolve(name);
            Files.createDirectories(to.getParent());
            Path from = Launcher.projectFolder().resolve(name);
            if (Files.exists(from)) {
                Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        jar = clone.resolve("cli").resolve("target").resolve("freshfurrow.jar");
        writeSmallJar(folder.resolve("small.jar"));
        Path maven = Files.createDirectory(folder.resolve("bin")).resolve("mvn");
        Files.writeString(maven, """
                #!/bin/sh
                to=cli/target/freshfurrow.jar
                for word in "$@"; do
                    case $word in -Dfreshfurrow.jar=*) to=${word#*=} ;; esac
                done
                mkdir -p cli/target
                echo run >>SMALL.runs
                head -c 500 SMALL.jar >"$to"
                sleep 1
                tail -c +501 SMALL.jar >>"$to"
                """.replace("SMALL", folder.resolve("small").toString()));
        assertThat(maven.toFile().setExecutable(true)).isTrue();
    }

    @Test
    void twoFirstStartsAtOnceBuildOnceAndBothRun() throws Exception {
        Process one = begin("one");
        Process other = begin("other");

        assertRan(Launcher.result(one), "one");
        assertRan(Launcher.result(other), "other");

        assertThat(runs()).isEqualTo(1);
        assertThat(jar).hasSameBinaryContentAs(folder.resolve("small.jar"));
        assertRan(Launcher.result(begin("later")), "later");
        assertThat(runs()).isEqualTo(1);
        assertThat(jar.getParent().toFile().list())
                .containsExactlyInAnyOrder("freshfurrow.jar", "freshfurrow.jsa", "freshfurrow.ready");
    }

    @Test
    void aJarThatCannotBeOpenedIsBuiltAgain() throws Exception {
        assertRan(Launcher.result(begin("first")), "first");
        byte[] whole = Files.readAllBytes(jar);

        Files.write(jar, Arrays.copyOf(whole, whole.length / 2));
        assertRan(Launcher.result(begin("short")), "short");

        byte[] altered = whole.clone();
        altered[whole.length / 2] ^= 0x55;
        Files.write(jar, altered);
        assertRan(Launcher.result(begin("altered")), "altered");

        assertThat(runs()).isEqualTo(3);
        assertThat(jar).hasBinaryContent(whole);
    }

    @Test
    void anAlteredArchiveOfClassesIsMadeAgain() throws Exception {
        assertRan(Launcher.result(begin("first")), "first");
        Path archive = jar.resolveSibling("freshfurrow.jsa");
        long size = Files.size(archive);
        Files.delete(archive);
        Files.writeString(archive, "half an archive");

        assertRan(Launcher.result(begin("second")), "second");

        assertThat(archive).hasSize(size);
        assertThat(runs()).isEqualTo(1);
    }

    @Test
    void aBuildThatIsKilledIsDoneAgain() throws Exception {
        Process killed = begin("killed");
        Launcher.awaitOnErr(killed, "Building");
        killed.descendants().forEach(ProcessHandle::destroyForcibly);
        killed.destroyForcibly().waitFor();

        assertRan(Launcher.result(begin("next")), "next");

        assertThat(jar).hasSameBinaryContentAs(folder.resolve("small.jar"));
        assertThat(jar.getParent().toFile().list())
                .containsExactlyInAnyOrder("freshfurrow.jar", "freshfurrow.jsa", "freshfurrow.ready");
    }

    private Process begin(String word) throws IOException {
        List<String> command =
                new ArrayList<>(List.of(clone.resolve("freshfurrow").toString(), word));
        return Launcher.start(folder, Map.of("PATH", folder.resolve("bin") + ":" + System.getenv("PATH")), command);
    }

    private static void assertRan(Launcher.Result result, String word) {
        assertThat(result.out()).as(result.err()).isEqualTo("started with " + word + "\n");
        assertThat(result.exitCode()).isZero();
    }

    private long runs() throws IOException {
        return Files.readAllLines(folder.resolve("small.runs")).size();
    }

    private static void writeSmallJar(Path file) throws IOException {
        String entry = SmallProgram.class.getName().replace('.', '/') + ".class";
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, SmallProgram.class.getName());
        try (OutputStream out = Files.newOutputStream(file);
                JarOutputStream small = new JarOutputStream(out, manifest);
                InputStream program = SmallProgram.class.getClassLoader().getResourceAsStream(entry)) {
            small.putNextEntry(new JarEntry(entry));
            program.transferTo(small);
            small.closeEntry();
        }
    }
}
