package freshfurrow.desk.ask;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.springs.ComparisonOrder;
import freshfurrow.app.springs.SpringRange;
import freshfurrow.app.springs.VariantFile;
import freshfurrow.cli.page.ComparisonPage;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.DeskServer;
import freshfurrow.desk.server.Events;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import freshfurrow.desk.server.Unanswered;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Variants of the season lived through many springs: would a second rig pay? */
public final class ComparisonDesk implements Part, AutoCloseable {
    private static final int MOST_SPRINGS = 1_000;
    private static final long STEPS = 5_000;
    private static final String PATCH = ".*\\.(ya?ml|json)";

    private final DeskSeason season;
    private final Events events;
    private final RigsAsWritten rigs;
    private Optional<ComparisonRun> run = Optional.empty();

    public ComparisonDesk(DeskSeason season, Events events, RigsAsWritten rigs) {
        this.season = season;
        this.events = events;
        this.rigs = rigs;
    }

    @Override
    public void answers(Routes routes) {
        routes.get("/api/compare", Role.OWNER, request -> state());
        routes.post("/api/compare/start", Role.OWNER, (order, by) -> start(order));
        routes.post("/api/compare/stop", Role.OWNER, (none, by) -> stop());
        routes.show(
                "/compare.html",
                Role.OWNER,
                request -> DeskServer.sendOwnPage(
                        request,
                        ComparisonPage.html(
                                finished().orElseThrow(() -> new Unanswered(404, "Nothing is compared yet.")))));
    }

    private synchronized Optional<freshfurrow.model.compare.ComparedSprings> finished() {
        return run.flatMap(ComparisonRun::finished);
    }

    private synchronized JsonNode state() {
        ObjectNode state = Json.object();
        state.set("variants", Json.list(variants()));
        state.set("rigs", Json.list(List.copyOf(rigs.ids())));
        run.ifPresent(running -> state.set("run", running.describe()));
        return state;
    }

    /** Files beside the season's that may be variants of it. */
    private List<String> variants() {
        try (Stream<Path> files = Files.list(season.given().folder())) {
            return files.filter(Files::isRegularFile)
                    .map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.matches(PATCH) && !name.equals(rigs.seasonFile()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private synchronized JsonNode start(JsonNode order) {
        if (run.filter(ComparisonRun::isUnderway).isPresent()) {
            throw new Unanswered(409, "A comparison is being made; wait for it.");
        }
        int springs = order.path("springs").asInt(0);
        if (springs < 1 || springs > MOST_SPRINGS) {
            throw Unanswered.senseless("Compare over 1 to " + MOST_SPRINGS + " springs.");
        }
        VariantFile variant = variant(order);
        ComparisonOrder comparison = new ComparisonOrder(
                season.given().path(),
                List.of(List.of(variant.path())),
                new SpringRange(1, springs),
                0,
                0,
                false,
                STEPS,
                1,
                Runtime.getRuntime().availableProcessors());
        ComparisonRun next = new ComparisonRun(comparison, variant, this::tell);
        run = Optional.of(next);
        next.begin();
        return tell();
    }

    private synchronized JsonNode stop() {
        run.filter(ComparisonRun::isUnderway).ifPresent(ComparisonRun::stop);
        return state();
    }

    private VariantFile variant(JsonNode order) {
        Optional<String> rig = Json.text(order, "secondLike");
        if (rig.isPresent()) {
            return rigs.second(rig.get());
        }
        String name = Json.needed(order, "variant");
        if (!variants().contains(name)) {
            throw Unanswered.senseless("The season's folder has no file " + name + ".");
        }
        return VariantFile.there(season.given().folder().resolve(name));
    }

    /** Ends what is underway, with nothing left behind of it. */
    @Override
    public void close() {
        Optional<ComparisonRun> last;
        synchronized (this) {
            last = run;
        }
        last.ifPresent(ComparisonRun::end);
    }

    private synchronized JsonNode tell() {
        JsonNode state = state();
        events.tell("compare", state);
        return state;
    }
}
