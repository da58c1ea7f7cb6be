package freshfurrow.cli.example;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A log of the example season, entry by entry. Times are those of Tuesday. */
public final class ExampleLog {
    private final List<Entry> entries = new ArrayList<>();

    public ExampleLog add(String clock, Fact fact) {
        return add(clock, fact, "");
    }

    public ExampleLog add(String clock, Fact fact, String note) {
        entries.add(new Entry(entries.size() + 1, at(TUESDAY, clock), fact, note));
        return this;
    }

    /** Work of which somebody said how long it took. */
    public ExampleLog timed(String clock, Fact fact, Duration took) {
        entries.add(new Entry(entries.size() + 1, at(TUESDAY, clock), fact, Optional.of(took), ""));
        return this;
    }

    /** Planting by nobody in particular from a load, or from none that is known when it is blank. */
    public ExampleLog planted(String clock, String field, double ha, String load) {
        Optional<String> known = Optional.of(load).filter(id -> !id.isBlank());
        return add(clock, new Fact.Planted(field, ha, Optional.empty(), known));
    }

    /** A batch out of both lots for some loads. */
    public ExampleLog batch(String clock, double windrowKg, double boughtKg, String... loads) {
        Map<String, Double> lots = new LinkedHashMap<>();
        lots.put("windrow", windrowKg);
        lots.put("bought", boughtKg);
        return add(clock, new Fact.BatchMade("R1", lots, List.of(loads), Optional.empty()));
    }

    public SeasonLog log() {
        return new SeasonLog(entries);
    }

    public Entry last() {
        return entries.get(entries.size() - 1);
    }
}
