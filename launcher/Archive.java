import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes the archive of classes that are ready to map, with which every start is faster:
 * {@code java Archive.java JAVA OPTIONS JAR SEASON ARCHIVE}. JAVA is the one that will read it, OPTIONS the file of options that it is
 * started with, and SEASON what is planned to see which classes are used. The exit code tells whether it could be made and read.
 */
final class Archive {
    private static final long MOST_S_OF_DESK = 60;

    private final String java;
    private final String options;
    private final String jar;
    private final String season;

    private Archive(String java, String options, String jar, String season) {
        this.java = java;
        this.options = options;
        this.jar = jar;
        this.season = season;
    }

    public static void main(String[] args) throws Exception {
        Path archive = Path.of(args[4]);
        Path work = Files.createTempDirectory(archive.toAbsolutePath().getParent(), "freshfurrow-part-");
        boolean made;
        try {
            made = new Archive(args[0], args[1], args[2], args[3]).make(archive, work);
        } finally {
            delete(work);
        }
        System.exit(made ? 0 : 1);
    }

    private boolean make(Path archive, Path work) throws IOException, InterruptedException {
        Path ofPlan = work.resolve("of-plan");
        Path all = work.resolve("classes");
        // Of classes as old as the command line library's only an archive made in two steps can hold any.
        boolean planned = run("-XX:DumpLoadedClassList=" + ofPlan, "-jar", jar, "plan", season, "--steps", "100", "--out", work + "/plan");
        if (!planned) {
            return false;
        }
        // In order, so that the same classes give the same archive.
        Set<String> classes = new TreeSet<>(classesIn(ofPlan));
        classes.addAll(classesOfDesk(work.resolve("of-desk")));
        Files.write(all, classes);
        return run("-Xshare:dump", "-XX:SharedClassListFile=" + all, "-XX:SharedArchiveFile=" + archive, "-jar", jar)
                && run("-Xshare:on", "-XX:SharedArchiveFile=" + archive, "-jar", jar, "--version");
    }

    /** Those that a desk uses until its first page is answered; where it cannot be opened, the plan's have to do. */
    private List<String> classesOfDesk(Path list) throws IOException, InterruptedException {
        Process desk = command("-XX:DumpLoadedClassList=" + list, "-jar", jar, "desk", season, "--no-browser").start();
        desk.getOutputStream().close();
        CompletableFuture.delayedExecutor(MOST_S_OF_DESK, TimeUnit.SECONDS).execute(desk::destroyForcibly);
        try (BufferedReader out = new BufferedReader(new InputStreamReader(desk.getInputStream(), StandardCharsets.UTF_8))) {
            Matcher link = Pattern.compile("(http://[^/]+)(/open.*)").matcher(String.valueOf(out.readLine()));
            if (link.find()) {
                askFirstPage(link.group(1), link.group(2));
                desk.destroy();
            }
        } catch (IOException e) {
            desk.destroy();
        }
        desk.waitFor();
        return Files.exists(list) ? classesIn(list) : List.of();
    }

    /** Without the numbers that each list gives to its classes, which only those of other loaders are known by. */
    private static List<String> classesIn(Path list) throws IOException {
        return Files.readAllLines(list).stream()
                .filter(line -> !line.contains(" source: "))
                .map(line -> line.replaceFirst(" id: \\d+$", ""))
                .toList();
    }

    /** As a browser asks. */
    private static void askFirstPage(String desk, String opening) throws IOException, InterruptedException {
        HttpClient browser = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        for (String path : List.of(opening, "/", "/desk/desk.js", "/api/role", "/api/season/schema", "/api/season", "/api/season/sums")) {
            browser.send(HttpRequest.newBuilder(URI.create(desk + path)).build(), HttpResponse.BodyHandlers.discarding());
        }
    }

    private boolean run(String... arguments) throws IOException, InterruptedException {
        Process process = command(arguments).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        process.getOutputStream().close();
        return process.waitFor() == 0;
    }

    private ProcessBuilder command(String... arguments) {
        List<String> command = new ArrayList<>(List.of(java, "@" + options));
        command.addAll(Arrays.asList(arguments));
        return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
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
}
