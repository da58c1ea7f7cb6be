package freshfurrow.desk;

import freshfurrow.app.editing.SeasonEditing;
import freshfurrow.app.output.CrewKeyFile;
import freshfurrow.desk.ask.AskDesk;
import freshfurrow.desk.ask.ComparisonDesk;
import freshfurrow.desk.ask.LearnDesk;
import freshfurrow.desk.ask.PaperDesk;
import freshfurrow.desk.begin.BeginDesk;
import freshfurrow.desk.planning.PlanningDesk;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.season.SeasonDesk;
import freshfurrow.desk.season.WrittenRigs;
import freshfurrow.desk.server.DeskServer;
import freshfurrow.desk.server.Doors;
import freshfurrow.desk.server.Events;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.share.ShareDesk;
import freshfurrow.desk.today.TodayDesk;
import freshfurrow.desk.trial.TrialDesk;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;

/** A season on a desk, which browsers open by a link until it is closed. */
public final class Desk implements AutoCloseable {
    private static final Set<String> LOCAL_NAMES = Set.of(Doors.LOOPBACK, "localhost");

    private final DeskServer server;
    private final PlanningDesk planning;
    private final ComparisonDesk comparison;
    private final CountDownLatch ended;
    private final boolean shared;

    private Desk(
            DeskServer server, PlanningDesk planning, ComparisonDesk comparison, CountDownLatch ended, boolean shared) {
        this.server = server;
        this.shared = shared;
        this.planning = planning;
        this.comparison = comparison;
        this.ended = ended;
    }

    /**
     * Opens it; from then on it answers.
     *
     * @throws IOException when it cannot listen on that port
     */
    public static Desk open(DeskOrder order) throws IOException {
        DeskSeason season = new DeskSeason(order.season(), order.clock());
        SeasonEditing editing = new SeasonEditing(order.season().path());
        Events events = new Events();
        SeasonDesk forms = new SeasonDesk(editing, events);
        readAhead(forms);
        CountDownLatch ended = new CountDownLatch(1);
        PlanningDesk planning = new PlanningDesk(season, events);
        ComparisonDesk comparison = new ComparisonDesk(season, events, new WrittenRigs(editing, season));
        AtomicReference<DeskServer> opened = new AtomicReference<>();
        List<Part> parts = List.of(
                new BeginDesk(order.season(), order.clock(), events),
                forms,
                planning,
                new TrialDesk(season),
                new TodayDesk(season, events),
                new AskDesk(season),
                new PaperDesk(season),
                new LearnDesk(season),
                comparison,
                new ShareDesk(order.shared(), address -> opened.get().link(address, Role.CREW)),
                routes -> routes.post("/api/end", Role.OWNER, (none, by) -> {
                    ended.countDown();
                    return Json.object();
                }));
        opened.set(DeskServer.open(doors(order), events, parts));
        return new Desk(opened.get(), planning, comparison, ended, order.shared());
    }

    /** While the server starts, so that the first page need not wait until all that reads a season is there. */
    private static void readAhead(SeasonDesk forms) {
        Thread reading = new Thread(forms::readAhead, "reading");
        reading.setDaemon(true);
        reading.start();
    }

    private static Doors doors(DeskOrder order) {
        if (!order.shared()) {
            return new Doors(Doors.LOOPBACK, LOCAL_NAMES, order.port(), DeskServer.newCrewKey());
        }
        Set<String> names = new HashSet<>(LOCAL_NAMES);
        names.addAll(ShareDesk.addresses());
        CrewKeyFile file = new CrewKeyFile(order.season());
        String key = file.read().orElseGet(() -> {
            String drawn = DeskServer.newCrewKey();
            file.write(drawn);
            return drawn;
        });
        return new Doors(Doors.EVERYWHERE, names, order.port(), key);
    }

    /** What its owner opens it with. */
    public String link() {
        return server.link("localhost", Role.OWNER);
    }

    /** What phones on the farm's own network open it with; none unless it is shared. */
    public List<String> crewLinks() {
        return shared
                ? ShareDesk.addresses().stream()
                        .map(address -> server.link(address, Role.CREW))
                        .toList()
                : List.of();
    }

    /** Waits until its owner has ended it from a page. */
    public void awaitEnd() throws InterruptedException {
        ended.await();
    }

    @Override
    public void close() {
        planning.close();
        comparison.close();
        server.close();
    }
}
