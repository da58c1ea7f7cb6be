package freshfurrow.desk;

import freshfurrow.app.editing.SeasonEditing;
import freshfurrow.desk.ask.AskDesk;
import freshfurrow.desk.ask.ComparisonDesk;
import freshfurrow.desk.ask.PaperDesk;
import freshfurrow.desk.planning.PlanningDesk;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.season.SeasonDesk;
import freshfurrow.desk.season.WrittenRigs;
import freshfurrow.desk.server.DeskServer;
import freshfurrow.desk.server.Events;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.today.TodayDesk;
import freshfurrow.desk.trial.TrialDesk;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;

/** A season on a desk, which browsers open by a link until it is closed. */
public final class Desk implements AutoCloseable {
    private final DeskServer server;
    private final PlanningDesk planning;
    private final CountDownLatch ended;

    private Desk(DeskServer server, PlanningDesk planning, CountDownLatch ended) {
        this.server = server;
        this.planning = planning;
        this.ended = ended;
    }

    /**
     * Opens it; from then on it answers.
     *
     * @throws IOException when it cannot listen on that port
     */
    public static Desk open(DeskOrder order) throws IOException {
        DeskSeason season = new DeskSeason(order.season(), order.clock());
        Events events = new Events();
        CountDownLatch ended = new CountDownLatch(1);
        PlanningDesk planning = new PlanningDesk(season, events);
        Part end = routes -> routes.post("/api/end", Role.OWNER, (none, by) -> {
            ended.countDown();
            return Json.object();
        });
        SeasonEditing editing = new SeasonEditing(order.season().path());
        DeskServer server = DeskServer.open(
                DeskServer.LOOPBACK,
                Set.of(DeskServer.LOOPBACK, "localhost"),
                order.port(),
                events,
                List.of(
                        new SeasonDesk(editing, events),
                        planning,
                        new TrialDesk(season),
                        new TodayDesk(season, events),
                        new AskDesk(season),
                        new PaperDesk(season),
                        new ComparisonDesk(season, events, new WrittenRigs(editing, season)),
                        end));
        return new Desk(server, planning, ended);
    }

    /** What its owner opens it with. */
    public String link() {
        return server.link("localhost", Role.OWNER);
    }

    /** Waits until its owner has ended it from a page. */
    public void awaitEnd() throws InterruptedException {
        ended.await();
    }

    @Override
    public void close() {
        planning.close();
        server.close();
    }
}
