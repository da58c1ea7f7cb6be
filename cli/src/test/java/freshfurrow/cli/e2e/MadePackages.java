package freshfurrow.cli.e2e;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** The packages for this system, made once for all tests of them, by the newest JDK that is installed. */
final class MadePackages {
    private static final Path FOLDER = Launcher.projectFolder().resolve("cli/target/packages");
    private static final Path INSTALLED = Path.of("/usr/lib/jvm");
    private static final Optional<Path> JDK = newest();
    private static final Launcher.Result MADE = made();

    private MadePackages() {}

    /** Where they are. Skips the test where packages cannot be made. */
    static Path folder() {
        Assumptions.assumeTrue(System.getProperty("os.name").equals("Linux"), "packages are only tried on Linux");
        Assumptions.assumeTrue(JDK.isPresent(), "no JDK here has jpackage; packages were not tried");
        if (MADE.exitCode() != 0) {
            throw new AssertionError(MADE.all());
        }
        return FOLDER;
    }

    /** The application's folder. */
    static Path application() {
        return folder().resolve("freshfurrow");
    }

    static Path debian() throws IOException {
        try (Stream<Path> files = Files.list(folder())) {
            return files.filter(file -> file.toString().endsWith(".deb"))
                    .findFirst()
                    .orElseGet(() -> Assumptions.abort("dpkg-deb is not installed; the Debian package was not tried"));
        }
    }

    /** Runs a source file of the packages with the JDK that makes them. */
    static Launcher.Result java(Path in, String... arguments) throws Exception {
        return Launcher.resultOfBuild(Launcher.start(
                in,
                Map.of(),
                Stream.concat(Stream.of(JDK.orElseThrow().resolve("bin/java").toString()), Stream.of(arguments))
                        .toList()));
    }

    /** The version of Java in them. */
    static int javaFeature() {
        return Runtime.Version.parse(version(JDK.orElseThrow())).feature();
    }

    private static Launcher.Result made() {
        if (JDK.isEmpty()) {
            return new Launcher.Result(1, "", "no JDK");
        }
        try {
            return java(Launcher.projectFolder(), "packages/Make.java", FOLDER.toString());
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static Optional<Path> newest() {
        try (Stream<Path> installed = Files.isDirectory(INSTALLED) ? Files.list(INSTALLED) : Stream.empty()) {
            return Stream.concat(Stream.of(Path.of(System.getProperty("java.home"))), installed)
                    .filter(jdk ->
                            Files.isExecutable(jdk.resolve("bin/jpackage")) && Files.exists(jdk.resolve("release")))
                    .max(Comparator.comparing(jdk -> Runtime.Version.parse(version(jdk))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String version(Path jdk) {
        try {
            Properties release = new Properties();
            release.load(new StringReader(Files.readString(jdk.resolve("release"))));
            return release.getProperty("JAVA_VERSION").replace("\"", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
