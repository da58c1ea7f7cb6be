package freshfurrow.desk.ask;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.springs.ComparisonOrder;
import freshfurrow.app.springs.SeasonComparison;
import freshfurrow.app.springs.VariantFile;
import freshfurrow.cli.text.ComparisonReport;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.words.DeskWords;
import freshfurrow.model.compare.ComparedSprings;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One comparison, on a thread of its own. */
final class ComparisonRun {
    private static final long EVERY_NS = 250_000_000;
    private static final long MOST_MS_TO_END = 2_000;

    private final ComparisonOrder order;
    private final VariantFile variant;
    private final Runnable news;
    private final Thread thread = new Thread(this::run, "comparison");
    private volatile int lived;
    private volatile int all;
    private volatile long toldNs;
    private volatile Optional<ComparedSprings> compared = Optional.empty();
    private volatile List<String> problems = List.of();
    private volatile boolean stopping;
    private volatile boolean stopped;

    /**
     * A comparison that has not begun yet.
     *
     * @param variant taken back unless something comes of the comparison
     * @param news called now and then while it is made, and when it is, from any thread
     */
    ComparisonRun(ComparisonOrder order, VariantFile variant, Runnable news) {
        this.order = order;
        this.variant = variant;
        this.news = news;
    }

    void begin() {
        thread.setDaemon(true);
        thread.start();
    }

    /** Ends it soon, without a comparison. */
    void stop() {
        stopping = true;
        thread.interrupt();
    }

    /** Ends it, and leaves nothing of it behind, whether it has noticed yet or not. */
    void end() {
        if (!isUnderway()) {
            return;
        }
        stop();
        try {
            thread.join(MOST_MS_TO_END);
            variant.takeBack();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (Refused e) {
            // the file stays, and what else ends goes on
        }
    }

    boolean isUnderway() {
        return compared.isEmpty() && problems.isEmpty() && !stopped;
    }

    Optional<ComparedSprings> finished() {
        return compared;
    }

    private void run() {
        try {
            compared = Optional.of(SeasonComparison.of(order, this::lived));
        } catch (Refused e) {
            end(DeskWords.lines(e.refusal()));
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            end(DeskWords.own(e));
        }
        news.run();
    }

    /** Without a comparison: whatever fails once it is to be stopped fails because of that. */
    private void end(List<String> why) {
        boolean byPeople = stopping;
        Thread.interrupted(); // or the variant's file could not be reached
        try {
            variant.takeBack();
        } catch (Refused e) {
            problems = Stream.concat(why.stream(), DeskWords.lines(e.refusal()).stream())
                    .toList();
            return;
        }
        if (byPeople) {
            stopped = true;
        } else {
            problems = why;
        }
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
        data.put("state", isUnderway() ? "underway" : compared.isPresent() ? "made" : stopped ? "stopped" : "failed");
        data.put("lived", lived).put("all", all);
        data.set("problems", Json.list(problems));
        compared.ifPresent(springs -> data.set("lines", Json.list(ComparisonReport.lines(springs))));
        return data;
    }
}
