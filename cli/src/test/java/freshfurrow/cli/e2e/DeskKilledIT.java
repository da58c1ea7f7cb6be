package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Crews tap on their phones while the desk is killed (SIGKILL) at random moments and started again. */
final class DeskKilledIT {
    private static final int PHONES = 20;
    private static final int KILLS = 25;
    private static final int LONGEST_MS = 200;
    private static final int OK = 200;

    @TempDir
    private Path folder = Path.of("");

    private final AtomicInteger answered = new AtomicInteger();
    private volatile boolean over;
    private int port;

    @Test
    @Timeout(900)
    void eachTapIsInTheLogOnce() throws Exception {
        SeasonOnDisk.in(folder);
        assertThat(InProcess.run("plan", folder.toString(), "--steps", "200", "--seed", "1")
                        .exitCode())
                .isZero();
        port = freePort();
        Process desk = start();
        String cookie = cookie();
        ExecutorService crew = Executors.newFixedThreadPool(PHONES);
        try {
            List<Future<List<String>>> phones = IntStream.range(0, PHONES)
                    .mapToObj(phone -> crew.submit((Callable<List<String>>) () -> taps("phone" + phone, cookie, phone)))
                    .toList();
            Random random = new Random(25);
            for (int kill = 0; kill < KILLS; kill++) {
                awaitAnswers(); // so that the kill falls into the writing, not into the start
                Thread.sleep(random.nextInt(LONGEST_MS));
                kill(desk);
                desk = start();
            }
            over = true;
            List<String> tapped = new ArrayList<>();
            for (Future<List<String>> phone : phones) {
                tapped.addAll(phone.get());
            }

            assertThat(tapped).hasSizeGreaterThan(PHONES + KILLS);
            List<Entry> entries = entries();
            assertThat(entries.stream().map(Entry::number).toList())
                    .isEqualTo(IntStream.rangeClosed(1, entries.size()).boxed().toList());
            assertThat(entries.stream().map(Entry::note).toList()).containsExactlyInAnyOrderElementsOf(tapped);
            assertThat(cookie())
                    .as("the same link lets a crew in after a start")
                    .isEqualTo(cookie);
            Launcher.Result listed = InProcess.run("log", folder.toString());
            assertThat(listed.exitCode()).isZero();
            assertThat(listed.out()).contains(tapped.get(0));
        } finally {
            over = true;
            kill(desk);
            crew.shutdownNow();
        }
    }

    private void awaitAnswers() throws InterruptedException {
        int before = answered.get();
        while (answered.get() == before) {
            Thread.sleep(5);
        }
    }

    /** Through its handle: the process itself would close what it has said. */
    private static void kill(Process desk) throws InterruptedException {
        desk.toHandle().destroyForcibly();
        desk.waitFor();
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private Process start() throws IOException {
        Path jar = Launcher.jar();
        Process desk = Launcher.start(
                folder,
                Map.of(),
                List.of(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-XX:SharedArchiveFile=" + jar.resolveSibling("freshfurrow.jsa"),
                        "-Xshare:auto",
                        "-Xlog:disable",
                        "-jar",
                        jar.toString(),
                        "desk",
                        folder.toString(),
                        "--share",
                        "--no-browser",
                        "--port",
                        String.valueOf(port)));
        BufferedReader out = desk.inputReader(StandardCharsets.UTF_8);
        String line = out.readLine();
        while (line != null && !line.startsWith("It ends with")) {
            line = out.readLine();
        }
        assertThat(line).as("the desk opens").isNotNull();
        return desk;
    }

    /** That of a crew, by the secret that stays from day to day. */
    private String cookie() throws Exception {
        String key = Files.readString(folder.resolve(".freshfurrow-crew")).strip();
        HttpResponse<String> opened = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/open?key=" + key))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        return opened.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
    }

    /** Taps until it is over, each sent until it is answered, as the page does; some are sent although they were answered. */
    private List<String> taps(String phone, String cookie, int seed) throws Exception {
        HttpClient http =
                HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
        Random random = new Random(seed);
        List<String> notes = new ArrayList<>();
        while (!over) {
            String note = phone + " tap " + notes.size();
            String line = new ObjectMapper()
                    .writeValueAsString(Map.of(
                            "lines", List.of(Map.of("at", "2027-04-20T10:00:00", "fact", "note", "note", note))));
            HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/api/log"))
                    .timeout(Duration.ofSeconds(30))
                    .header("Cookie", cookie)
                    .header("Origin", "http://localhost:" + port)
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(line))
                    .build();
            notes.add(note);
            for (int sent = random.nextInt(5) == 0 ? 2 : 1; sent > 0; sent--) {
                untilAnswered(http, request);
            }
            Thread.sleep(random.nextInt(400));
        }
        return notes;
    }

    private void untilAnswered(HttpClient http, HttpRequest request) throws InterruptedException {
        while (true) {
            try {
                HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
                if (answer.statusCode() == OK) {
                    answered.incrementAndGet();
                    return;
                }
                assertThat(answer.statusCode()).as(answer.body()).isGreaterThanOrEqualTo(500);
            } catch (IOException e) {
                Thread.sleep(50); // the desk is away
            }
        }
    }

    private List<Entry> entries() {
        Season season = ((Reading.Valid) SeasonFiles.read(folder, List.of())).season();
        LogReading reading = LogReader.read(folder.resolve("log.csv"), LogContext.of(season));
        assertThat(reading).isInstanceOf(LogReading.Valid.class);
        return ((LogReading.Valid) reading).log().entries();
    }
}
