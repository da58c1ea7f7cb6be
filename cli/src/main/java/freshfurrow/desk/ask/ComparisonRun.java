package freshfurrow.desk.ask;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.springs.ComparisonOrder;
import freshfurrow.app.springs.SeasonComparison;
import freshfurrow.cli.text.ComparisonReport;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.words.DeskWords;
import freshfurrow.model.compare.ComparedSprings;
import java.util.List;
import java.util.Optional;

/** One comparison, on a thread of its own. */
final class ComparisonRun {
    private static final long EVERY_NS = 250_000_000;

    private final ComparisonOrder order;
    private final Runnable news;
    private volatile int lived;
    private volatile int all;
    private volatile long toldNs;
    private volatile Optional<ComparedSprings> compared = Optional.empty();
    private volatile List<String> problems = List.of();

    /** @param news called now and then while it is made, and when it is, from any thread */
    ComparisonRun(ComparisonOrder order, Runnable news) {
        this.order = order;
        this.news = news;
    }

    void begin() {
        Thread thread = new Thread(this::run, "comparison");
        thread.setDaemon(true);
        thread.start();
    }

    boolean isUnderway() {
        return compared.isEmpty() && problems.isEmpty();
    }

    Optional<ComparedSprings> finished() {
        return compared;
    }

    private void run() {
        try {
            compared = Optional.of(SeasonComparison.of(order, this::lived));
        } catch (Refused e) {
            problems = DeskWords.lines(e.refusal());
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            problems = DeskWords.own(e);
        }
        news.run();
    }

    private void lived(int lived, int all) {
        this.lived = lived;
        this.all = all;
        long now = System.nanoTime();
        if (now - toldNs > EVERY_NS) {
            toldNs = now;
            news.run();
        }
    }

    JsonNode describe() {
        ObjectNode data = Json.object();
        data.put("state", isUnderway() ? "underway" : compared.isPresent() ? "made" : "failed");
        data.put("lived", lived).put("all", all);
        data.set("problems", Json.list(problems));
        compared.ifPresent(springs -> data.set("lines", Json.list(ComparisonReport.lines(springs))));
        return data;
    }
}
