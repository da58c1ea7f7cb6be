package freshfurrow.app.planning;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What the parts of a command take by the clock. */
public final class TimeTaken {
    private static final double NS_PER_S = 1e9;

    private final long startNs = System.nanoTime();
    private final Map<String, Long> partsNs = new LinkedHashMap<>();
    private long partBeganNs = startNs;

    /** A reading of {@link System#nanoTime} at the start. */
    public long startNs() {
        return startNs;
    }

    /** Puts the time since the last part ended down to a part, which may have been worked on before. */
    public void endOf(String part) {
        long nowNs = System.nanoTime();
        partsNs.merge(part, nowNs - partBeganNs, Long::sum);
        partBeganNs = nowNs;
    }

    public String line() {
        String parts = partsNs.entrySet().stream()
                .map(part -> part.getKey() + " " + seconds(part.getValue()))
                .collect(Collectors.joining(", "));
        return "Took " + seconds(partBeganNs - startNs) + ": " + parts;
    }

    private static String seconds(long ns) {
        return String.format(Locale.ROOT, "%.1f s", ns / NS_PER_S);
    }
}
