import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Builds freshfurrow for its launchers, which run this file as it is when the jar is missing, old or altered: {@code java Build.java HOME}.
 * One at a time, whoever starts meanwhile waits; the jar and the archive of its classes are made beside and moved into place once they
 * can be opened.
 */
final class Build {
    private static final String PART = "freshfurrow-part-";
    private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

    private final Path home;
    private final Path target;
    private final Path jar;
    private final Path archive;
    private final Path ready;

    private Build(Path home) {
        this.home = home;
        target = home.resolve("cli").resolve("target");
        jar = target.resolve("freshfurrow.jar");
        archive = target.resolve("freshfurrow.jsa");
        ready = target.resolve("freshfurrow.ready");
    }

    public static void main(String[] args) throws Exception {
        System.exit(new Build(Path.of(args[0]).toAbsolutePath().normalize()).run());
    }

    private int run() throws IOException, InterruptedException {
        Path lockFile = home.resolve("target").resolve("launcher.lock");
        try {
            Files.createDirectories(lockFile.getParent());
            Files.createDirectories(target);
        } catch (IOException e) {
            return cannotWrite(e);
        }
        // The lock is lifted by the system when this process ends, however it ends. Its file stays among what is built.
        try (FileChannel channel =
                        FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = locked(channel)) {
            sweep();
            if (!isBuilt() && !build()) {
                return 1;
            }
            makeArchive();
            Files.writeString(ready, Long.toString(Files.size(jar)));
            return lock.isValid() ? 0 : 1;
        } catch (IOException e) {
            return cannotWrite(e);
        }
    }

    /** Where nothing can be written, a jar that is there does. */
    private int cannotWrite(IOException failure) {
        if (opens(jar)) {
            return 0;
        }
        System.err.println("freshfurrow cannot be built in " + home + " (" + failure + ").");
        return 1;
    }

    private static FileLock locked(FileChannel channel) throws IOException {
        FileLock lock = channel.tryLock();
        if (lock != null) {
            return lock;
        }
        System.err.println("Another start is building freshfurrow; this one waits for it.");
        return channel.lock();
    }

    /** What a build that was killed has left. */
    private void sweep() throws IOException {
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(target, PART + "*")) {
            for (Path part : parts) {
                delete(part);
            }
        }
    }

    private static void delete(Path path) throws IOException {
        if (Files.isDirectory(path)) {
            try (DirectoryStream<Path> inside = Files.newDirectoryStream(path)) {
                for (Path one : inside) {
                    delete(one);
                }
            }
        }
        Files.deleteIfExists(path);
    }

    private boolean isBuilt() throws IOException, InterruptedException {
        return works(jar) && !isAnySourceNewer();
    }

    /** The same files that the launcher looks at. */
    private boolean isAnySourceNewer() throws IOException {
        FileTime built = Files.getLastModifiedTime(jar);
        List<Path> sources = new ArrayList<>(List.of(home.resolve("pom.xml")));
        for (String module : List.of("model", "solver", "cli")) {
            sources.add(home.resolve(module).resolve("pom.xml"));
            Path main = home.resolve(module).resolve("src").resolve("main");
            if (Files.isDirectory(main)) {
                try (Stream<Path> files = Files.walk(main)) {
                    files.filter(Files::isRegularFile).forEach(sources::add);
                }
            }
        }
        for (Path source : sources) {
            if (Files.exists(source) && Files.getLastModifiedTime(source).compareTo(built) > 0) {
                return true;
            }
        }
        return false;
    }

    /** Checksums do not tell of names that are altered; a start does. */
    private static boolean works(Path jar) throws IOException, InterruptedException {
        return opens(jar) && java("-jar", jar.toString(), "--version");
    }

    /** Whether all of a jar can be read; its checksums are compared on the way. */
    private static boolean opens(Path jar) {
        if (!Files.isRegularFile(jar)) {
            return false;
        }
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            Enumeration<? extends ZipEntry> entries = zip.entries();
            while (entries.hasMoreElements()) {
                try (InputStream in = zip.getInputStream(entries.nextElement())) {
                    in.transferTo(OutputStream.nullOutputStream());
                }
            }
            return zip.size() > 0;
        } catch (IOException e) {
            return false;
        }
    }

    private boolean build() throws IOException, InterruptedException {
        System.err.println("Building freshfurrow; this happens once and takes a minute or two.");
        Path part = target.resolve(PART + ProcessHandle.current().pid() + ".jar");
        // Sources that change while it builds are newer than the jar.
        FileTime begun = FileTime.from(Instant.now());
        List<String> maven = new ArrayList<>(
                System.getProperty("os.name").startsWith("Windows") ? List.of("cmd", "/c", "mvn") : List.of("mvn"));
        maven.addAll(List.of("-q", "-B", "-DskipTests", "-Dquick", "-Dfreshfurrow.jar=" + part, "package"));
        int exitCode;
        try {
            ProcessBuilder builder = new ProcessBuilder(maven).directory(home.toFile()).inheritIO();
            builder.redirectInput(ProcessBuilder.Redirect.PIPE);
            builder.redirectOutput(ProcessBuilder.Redirect.PIPE);
            Process process = builder.start();
            process.getOutputStream().close();
            process.getInputStream().transferTo(System.err);
            exitCode = process.waitFor();
        } catch (IOException e) {
            System.err.println("freshfurrow has to be built first, which needs Maven (mvn).");
            return false;
        }
        if (exitCode != 0 || !works(part)) {
            System.err.println("freshfurrow could not be built; see above.");
            return false;
        }
        Files.setLastModifiedTime(part, begun);
        Files.move(part, jar, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        return true;
    }

    /** Classes that are ready to map make every start faster. Without them all works the same: then the archive is empty. */
    private void makeArchive() throws IOException, InterruptedException {
        Path part = target.resolve(PART + ProcessHandle.current().pid() + ".jsa");
        boolean made = java(
                launcher("Archive.java"),
                JAVA,
                launcher("java.options"),
                jar.toString(),
                home.resolve("scenarios").resolve("first-season").toString(),
                part.toString());
        if (!made) {
            Files.deleteIfExists(part);
            Files.createFile(part);
        }
        Files.move(part, archive, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    private String launcher(String file) {
        return home.resolve("launcher").resolve(file).toString();
    }

    private static boolean java(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(JAVA));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        process.getOutputStream().close();
        return process.waitFor() == 0;
    }
}
