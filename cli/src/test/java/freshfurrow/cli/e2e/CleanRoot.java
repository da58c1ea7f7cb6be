package freshfurrow.cli.e2e;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The files of a Debian system that has nothing but its base: no Java, no Maven, no language. What runs in it sees nothing else. */
record CleanRoot(Path folder) implements AutoCloseable {
    private static final Path PRISTINE = Launcher.projectFolder().resolve("cli/target/clean-root");
    private static final String DEBOOTSTRAP = "/usr/sbin/debootstrap";

    /** Makes one. Skips the test where nobody may, where the tool for it is not installed, or where Debian's packages are not to be had. */
    static CleanRoot make() throws Exception {
        if (!"root".equals(System.getProperty("user.name"))) {
            return abort("a clean system is made only as root; the Debian package was not installed");
        }
        if (!Files.isExecutable(Path.of(DEBOOTSTRAP))) {
            return abort("debootstrap is not installed; the Debian package was not installed on a clean system");
        }
        if (!Files.exists(PRISTINE)) {
            Path part = Files.createTempDirectory(PRISTINE.getParent(), "clean-root-part-");
            Launcher.Result made = outside(List.of(DEBOOTSTRAP, "--variant=minbase", "bookworm", part.toString()));
            if (made.exitCode() != 0) {
                outside(List.of("rm", "-rf", part.toString()));
                return abort("debootstrap found no packages; the Debian package was not installed on a clean system");
            }
            Files.move(part, PRISTINE);
        }
        Path own = Files.createTempDirectory(PRISTINE.getParent(), "clean-root-part-");
        must(outside(List.of("cp", "-aT", PRISTINE.toString(), own.toString())));
        // a temporary folder is for its owner alone, the root of a system for everybody
        must(outside(List.of("chmod", "755", own.toString())));
        return new CleanRoot(own);
    }

    /** Runs a command line there as the administrator, or fails. */
    Launcher.Result asRoot(String... command) throws Exception {
        return must(Launcher.result(start(List.of(), command)));
    }

    /** Runs a command line there as the grower, whose home is {@code /home/grower}. */
    Launcher.Result asGrower(String... command) throws Exception {
        return asGrower(printed -> {}, command);
    }

    /** Tells all that was printed whenever that is more. */
    Launcher.Result asGrower(Consumer<String> printed, String... command) throws Exception {
        return Launcher.result(start(List.of("--userspec=1000:1000"), command), printed);
    }

    /** Its mounts are its own, and end with it. */
    private Process start(List<String> options, String... command) throws IOException {
        List<String> all = new ArrayList<>(List.of(
                "unshare",
                "--mount",
                "sh",
                "-c",
                "mount --rbind /proc \"$0/proc\" && exec chroot \"$@\"",
                folder.toString()));
        all.addAll(options);
        all.addAll(List.of(folder.toString(), "env", "-i", "PATH=/usr/sbin:/usr/bin:/sbin:/bin", "HOME=/home/grower"));
        all.addAll(List.of(command));
        return Launcher.start(folder, Map.of(), all);
    }

    @Override
    public void close() throws IOException {
        try {
            new ProcessBuilder("rm", "-rf", folder.toString()).start().waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** All there is: folders, and for files and links what tells whether they were changed. */
    Map<String, String> files() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.toList()) {
                files.put("/" + folder.relativize(path), state(path));
            }
        }
        return files;
    }

    private static String state(Path path) throws IOException {
        if (Files.isSymbolicLink(path)) {
            return "to " + Files.readSymbolicLink(path);
        }
        return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
                ? "folder"
                : Files.size(path) + " bytes of " + Files.getLastModifiedTime(path);
    }

    private static Launcher.Result outside(List<String> command) throws Exception {
        return Launcher.resultOfBuild(Launcher.start(Launcher.projectFolder(), Map.of(), command));
    }

    private static Launcher.Result must(Launcher.Result result) {
        return result.exitCode() == 0 ? result : fail(result.all());
    }
}
