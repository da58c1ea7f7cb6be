package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.RepeatedTest;

final class DeskEndTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "first-season");

    /** Its page says that it is closed, and not that it does not answer. */
    @RepeatedTest(20)
    void whoeverClosesADeskIsAnsweredBeforeItIsClosed() throws IOException {
        Desk desk = Desk.open(
                new DeskOrder(new GivenSeason(SCENARIO, List.of()), new SeasonClock(Clock.systemUTC()), 0, false));
        CompletableFuture<Void> closed = CompletableFuture.runAsync(() -> closeAtTheEnd(desk));
        URI link = URI.create(desk.link());
        String cookie = new RawRequest(link.getPort(), "GET", link.getPath() + "?" + link.getQuery())
                .send()
                .cookie()
                .orElseThrow();

        RawRequest.Response answer = RawRequest.post(link.getPort(), "/api/end", "{}")
                .with("Cookie", cookie)
                .send();

        assertThat(answer.status()).isEqualTo(200);
        closed.join();
    }

    private static void closeAtTheEnd(Desk desk) {
        try (desk) {
            desk.awaitEnd();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
