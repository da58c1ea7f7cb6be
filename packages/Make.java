import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;

/**
 * Makes packages of what Maven has built, for the system that it runs on, each with a Java of its own:
 * {@code java packages/Make.java [FOLDER]}, in the folder of the project. FOLDER, {@code target/packages} if left out, is made anew.
 */
final class Make {
    private static final Path JAR = Path.of("cli", "target", "freshfurrow.jar");
    private static final Path PARTS = Path.of("cli", "target", "freshfurrow.cdx.xml");
    private static final Path OPTIONS = Path.of("launcher", "java.options");
    private static final Path SEASON = Path.of("scenarios", "first-season");
    private static final String SYSTEM = System.getProperty("os.name");
    private static final boolean LINUX = SYSTEM.equals("Linux");
    private static final boolean MAC = SYSTEM.startsWith("Mac");
    /** From here on an archive of classes may be moved with its jar. */
    private static final int ARCHIVES_MOVE = 19;

    private final Path out;
    private final String version;
    private final Instant stamp;

    private Make(Path out, Element pom) {
        this.out = out;
        this.version = text(pom, "version");
        this.stamp = Instant.parse(text(pom, "project.build.outputTimestamp"));
    }

    private static String text(Element pom, String name) {
        return pom.getElementsByTagName(name).item(0).getTextContent();
    }

    public static void main(String[] args) throws Exception {
        if (!Files.exists(JAR) || !Files.exists(PARTS)) {
            System.err.println("Build freshfurrow first, in its folder and with the network on: mvn -q -B -DskipTests package");
            System.exit(1);
        }
        Element pom = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(Path.of("pom.xml").toFile())
                .getDocumentElement();
        Path out = args.length > 0 ? Path.of(args[0]) : Path.of("target", "packages");
        new Make(out.toAbsolutePath().normalize(), pom).make();
    }

    private void make() throws IOException, InterruptedException {
        delete(out);
        Path work = Files.createDirectories(out.resolve("work"));
        Path app = application(runtime(work), work);
        stamp(app);
        archive(app, work);
        if (LINUX) {
            pack(app);
        } else {
            installer(app);
        }
        delete(work);
        System.out.println("Made in " + out);
    }

    /** A Java of those modules that the program needs. */
    private static Path runtime(Path work) {
        Path runtime = work.resolve("runtime");
        String modules = tool("jdeps", "--ignore-missing-deps", "--multi-release", "17", "--print-module-deps", JAR.toString());
        tool("jlink",
                "--add-modules", modules.strip(),
                "--no-header-files",
                "--no-man-pages",
                "--strip-java-debug-attributes",
                // of java.desktop only beans are used: no window, font or sound, so nothing that needs a display
                "--exclude-files", "/java.desktop/lib/**,/java.desktop/bin/**",
                "--output", runtime.toString());
        return runtime;
    }

    /** The application's folder, which can be moved anywhere. */
    private Path application(Path runtime, Path work) throws IOException, InterruptedException {
        Path input = Files.createDirectory(work.resolve("input"));
        Files.copy(JAR, input.resolve("freshfurrow.jar"));
        Files.copy(Path.of("LICENSE"), input.resolve("LICENSE"));
        copy(SEASON, input.resolve("examples").resolve("first-season"));
        if (run(List.of(java(Path.of(System.getProperty("java.home"))), "packages/Notices.java", input.toString())) != 0) {
            throw new IllegalStateException("Licenses are missing; see above.");
        }
        String name = LINUX ? "freshfurrow-java" : "freshfurrow";
        List<String> arguments = new ArrayList<>(List.of(
                "--type", "app-image",
                "--name", name,
                "--vendor", "freshfurrow",
                "--description", "Season plans for furrows wetted with fresh compost extract",
                "--input", input.toString(),
                "--main-jar", "freshfurrow.jar",
                "--runtime-image", runtime.toString(),
                "--dest", work.toString(),
                "--java-options", "-XX:SharedArchiveFile=$APPDIR/freshfurrow.jsa"));
        for (String option : Files.readAllLines(OPTIONS)) {
            if (!option.startsWith("#")) {
                arguments.addAll(List.of("--java-options", option));
            }
        }
        addVersion(arguments);
        if (SYSTEM.startsWith("Windows")) {
            arguments.add("--win-console");
        }
        tool("jpackage", arguments.toArray(String[]::new));
        if (!LINUX) {
            String folder = MAC ? "freshfurrow.app" : "freshfurrow";
            return Files.move(work.resolve(folder), out.resolve(folder));
        }
        Path app = Files.move(work.resolve(name), out.resolve("freshfurrow"));
        Path start = app.resolve("bin").resolve("freshfurrow");
        Files.copy(Path.of("packages", "linux-start.sh"), start);
        Files.setPosixFilePermissions(start, PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.delete(app.resolve("lib").resolve("freshfurrow-java.png"));
        Files.delete(app.resolve("lib").resolve("app").resolve(".jpackage.xml"));
        return app;
    }

    /** A program for macOS cannot have a version below 1; `freshfurrow --version` tells it. */
    private void addVersion(List<String> arguments) {
        if (!MAC || !version.startsWith("0")) {
            arguments.addAll(List.of("--app-version", version));
        }
    }

    /** Classes ready to map. */
    private void archive(Path app, Path work) throws IOException, InterruptedException {
        if (Runtime.version().feature() < ARCHIVES_MOVE) {
            System.err.println("Without an archive of classes, which Java " + Runtime.version().feature()
                    + " cannot move: the packages will start more slowly. A JDK of 21 or later makes quicker ones.");
            return;
        }
        Path jar = found(app, "freshfurrow.jar");
        Path archive = jar.resolveSibling("freshfurrow.jsa");
        String java = java(found(app, "release").getParent());
        List<String> command = List.of(
                java(Path.of(System.getProperty("java.home"))),
                "launcher/Archive.java", java, OPTIONS.toString(), jar.toString(), SEASON.toString(), archive.toString());
        if (run(command) != 0) {
            throw new IllegalStateException("The archive of classes could not be made.");
        }
        Files.setLastModifiedTime(archive, FileTime.from(stamp));
        stamp(jar.getParent());
    }

    private static Path found(Path app, String name) throws IOException {
        try (Stream<Path> files = Files.walk(app)) {
            return files.filter(file -> file.endsWith(name)).findFirst().orElseThrow();
        }
    }

    /** For Linux: one file to unpack anywhere and, where Debian's tools are, one to install. */
    private void pack(Path app) throws IOException, InterruptedException {
        String system = "-linux-" + System.getProperty("os.arch");
        Path tar = out.resolve("freshfurrow-" + version + system + ".tar.gz");
        must(List.of(
                "tar", "--sort=name", "--owner=0", "--group=0", "--numeric-owner", "--mtime=@" + stamp.getEpochSecond(),
                "--use-compress-program=gzip -n", "-C", out.toString(), "-cf", tar.toString(), "freshfurrow"));
        if (Files.isExecutable(Path.of("/usr/bin/dpkg-deb"))) {
            must(List.of(
                    "sh", "packages/debian/build", app.toString(), version, Long.toString(stamp.getEpochSecond()), out.toString()));
        }
    }

    /** For Windows and macOS: what people there install, where the tools for it are. */
    private void installer(Path app) {
        List<String> arguments = new ArrayList<>(List.of(
                "--type", MAC ? "dmg" : "msi",
                "--name", "freshfurrow",
                "--app-image", app.toString(),
                "--dest", out.toString()));
        addVersion(arguments);
        if (!MAC) {
            arguments.addAll(List.of("--win-per-user-install", "--win-dir-chooser", "--license-file", "LICENSE"));
        }
        try {
            tool("jpackage", arguments.toArray(String[]::new));
        } catch (IllegalStateException e) {
            System.err.println("No installer, only the folder " + app + ": " + e.getMessage());
        }
    }

    /** All files as old as the release, so that the same sources make the same packages. */
    private void stamp(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.toList()) {
                if (!Files.isSymbolicLink(file)) {
                    Files.setLastModifiedTime(file, FileTime.from(stamp));
                }
            }
        }
    }

    private static String java(Path home) {
        return home.resolve("bin").resolve("java").toString();
    }

    /** Runs a tool of the JDK. */
    private static String tool(String name, String... arguments) {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        PrintStream to = new PrintStream(printed, true, StandardCharsets.UTF_8);
        if (ToolProvider.findFirst(name).orElseThrow().run(to, to, arguments) != 0) {
            throw new IllegalStateException(name + " failed:\n" + printed.toString(StandardCharsets.UTF_8));
        }
        return printed.toString(StandardCharsets.UTF_8);
    }

    private static void must(List<String> command) throws IOException, InterruptedException {
        if (run(command) != 0) {
            throw new IllegalStateException(command.get(0) + " failed; see above.");
        }
    }

    private static int run(List<String> command) throws IOException, InterruptedException {
        return new ProcessBuilder(command).inheritIO().start().waitFor();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static void delete(Path path) throws IOException {
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            try (DirectoryStream<Path> inside = Files.newDirectoryStream(path)) {
                for (Path one : inside) {
                    delete(one);
                }
            }
        }
        Files.deleteIfExists(path);
    }
}
