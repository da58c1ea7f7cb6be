package freshfurrow.model.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A program that writes, for tests of several at once and of such that are killed. */
final class WriterProcess {
    static final int FILES = 5;

    /** A machine with other work may take long to force many files to its disk. */
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    /** Longer than one that waits for its turn takes from one try to the next. */
    private static final Duration REST = Duration.ofMillis(20);

    private WriterProcess() {}

    static Process start(String work, Path folder, String name) throws IOException {
        return new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        WriterProcess.class.getName(),
                        work,
                        folder.toString(),
                        name)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /**
     * Writes.
     *
     * @param args what to do, the folder, and the name of the writer
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Path.of(args[1]);
        switch (args[0]) {
            case "count" -> count(folder);
            case "create" -> create(folder, args[2]);
            case "set" -> writeOneSet(folder, args[2]);
            default -> writeSets(folder, args[2]);
        }
    }

    /** Adds one to a number in a file, twenty times. */
    private static void count(Path folder) throws IOException {
        Path file = folder.resolve("count");
        for (int i = 0; i < 20; i++) {
            WriteTurn.in(List.of(folder), PATIENCE, turn -> {
                int before = Files.exists(file) ? Integer.parseInt(Files.readString(file)) : 0;
                turn.write(List.of(NewFile.of(file, String.valueOf(before + 1), IfThere.REPLACE)));
                return before;
            });
        }
    }

    /** Makes twenty files in a folder that may not be there, and says which of them it made. */
    private static void create(Path folder, String name) throws IOException {
        for (int i = 0; i < 20; i++) {
            Path file = folder.resolve("new" + i).resolve("file");
            try {
                NewFile made = NewFile.of(file, name, IfThere.KEEP);
                WriteTurn.in(List.of(WriteTurn.folder(file)), PATIENCE, turn -> {
                    turn.write(List.of(made));
                    return name;
                });
                System.out.println("made " + i + " by " + name);
            } catch (ObstructedFile e) {
                System.out.println("there was " + i);
            }
        }
    }

    /** Writes five files of the same content together, without end, with a rest between in which another may have its turn. */
    private static void writeSets(Path folder, String name) throws IOException, InterruptedException {
        for (int i = 0; ; i++) {
            List<NewFile> files = set(folder, name + "-" + i);
            WriteTurn.in(List.of(folder), PATIENCE, turn -> {
                turn.write(files);
                return files.size();
            });
            if (i == 0) {
                sayBegun();
            }
            Thread.sleep(REST.toMillis());
        }
    }

    /** Writes one set, and then waits to be told to end. */
    private static void writeOneSet(Path folder, String name) throws IOException, InterruptedException {
        WriteTurn.in(List.of(folder), PATIENCE, turn -> {
            sayBegun();
            turn.write(set(folder, name));
            return name;
        });
        Thread.sleep(60_000);
    }

    private static List<NewFile> set(Path folder, String line) {
        String content = (line + "\n").repeat(2_000);
        List<NewFile> files = new ArrayList<>();
        for (int file = 0; file < FILES; file++) {
            files.add(NewFile.of(folder.resolve("file" + file), content, IfThere.REPLACE));
        }
        return files;
    }

    private static void sayBegun() {
        System.out.println("begun");
        System.out.flush();
    }

    static String said(Process process) throws IOException, InterruptedException {
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }
}
