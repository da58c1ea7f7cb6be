package freshfurrow.cli.e2e;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Runs the launcher of this project as a process. */
final class Launcher {
    private static final long MOST_SECONDS = 120;
    private static final long MOST_SECONDS_OF_A_FIRST_START = 600;
    private static final Path PROJECT = started(project());

    private Launcher() {}

    /** What a run printed, and its exit code. */
    record Result(int exitCode, String out, String err) {
        String all() {
            return out + err;
        }
    }

    static Path path() {
        return PROJECT.resolve("freshfurrow");
    }

    /** What the launcher runs, with the archive of its classes beside it. */
    static Path jar() {
        return PROJECT.resolve("cli").resolve("target").resolve("freshfurrow.jar");
    }

    static Path projectFolder() {
        return PROJECT;
    }

    /** The folder of a scenario. */
    static String scenario(String name) {
        return PROJECT.resolve("scenarios").resolve(name).toString();
    }

    /** Runs a command line in the project's folder. */
    static Result run(String... arguments) throws Exception {
        return runIn(PROJECT, path(), arguments);
    }

    /** Tells all that was printed whenever that is more. */
    static Result run(Consumer<String> printed, String... arguments) throws Exception {
        return result(start(PROJECT, Map.of(), command(path(), arguments)), printed);
    }

    static Result runIn(Path folder, Path launcher, String... arguments) throws Exception {
        return result(start(folder, Map.of(), command(launcher, arguments)));
    }

    /** Runs a command in a folder. */
    static Result runIn(Path folder, List<String> command) throws Exception {
        return result(start(folder, Map.of(), command));
    }

    /** The same, and tells all that was printed whenever that is more. */
    static Result runIn(Path folder, Path launcher, Consumer<String> printed, String... arguments) throws Exception {
        return result(start(folder, Map.of(), command(launcher, arguments)), printed);
    }

    private static List<String> command(Path launcher, String... arguments) {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        return command;
    }

    static Process start(Path folder, Map<String, String> environment, List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        return process;
    }

    /** Waits for the process to end. */
    static Result result(Process process) throws Exception {
        return result(process, all -> {});
    }

    /** Waits for the end of what may take as long as a build. */
    static Result resultOfBuild(Process process) throws Exception {
        return result(process, all -> {}, MOST_SECONDS_OF_A_FIRST_START);
    }

    /** Waits for the process to end, and tells all that was printed whenever that is more. */
    static Result result(Process process, Consumer<String> printed) throws Exception {
        return result(process, printed, MOST_SECONDS);
    }

    private static Result result(Process process, Consumer<String> printed, long mostSeconds) throws Exception {
        CompletableFuture<String> out = text(process.inputReader(StandardCharsets.UTF_8), printed);
        CompletableFuture<String> err = text(process.errorReader(StandardCharsets.UTF_8), all -> {});
        if (!process.waitFor(mostSeconds, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("still running after " + mostSeconds + " s");
        }
        return new Result(process.exitValue(), out.get(), err.get());
    }

    /** Reads standard error up to some text, and no further. */
    static void awaitOnErr(Process process, String text) throws IOException {
        BufferedReader err = process.errorReader(StandardCharsets.UTF_8);
        StringBuilder seen = new StringBuilder();
        while (seen.indexOf(text) < 0) {
            int c = err.read();
            if (c < 0) {
                throw new IllegalStateException("ended without '" + text + "': " + seen);
            }
            seen.append((char) c);
        }
    }

    private static CompletableFuture<String> text(Reader reader, Consumer<String> printed) {
        // a thread for each: one that waits for a thread of another's would leave a process with nobody to print to
        return CompletableFuture.supplyAsync(
                () -> {
                    try {
                        StringBuilder text = new StringBuilder();
                        char[] more = new char[8_192];
                        for (int length = reader.read(more); length >= 0; length = reader.read(more)) {
                            text.append(more, 0, length);
                            printed.accept(text.toString());
                        }
                        return text.toString();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                reading -> new Thread(reading, "output").start());
    }

    /** After a build the first start makes an archive of classes: no test of those that run side by side is to wait for another's. */
    private static Path started(Path project) {
        try {
            Process first = new ProcessBuilder(project.resolve("freshfurrow").toString(), "--version")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!first.waitFor(MOST_SECONDS_OF_A_FIRST_START, TimeUnit.SECONDS) || first.exitValue() != 0) {
                first.destroyForcibly();
                throw new IllegalStateException("freshfurrow does not start");
            }
            return project;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static Path project() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.exists(folder.resolve("freshfurrow.cmd"))) {
            Path parent = folder.getParent();
            if (parent == null) {
                throw new IllegalStateException("not within the project");
            }
            folder = parent;
        }
        return folder;
    }
}
