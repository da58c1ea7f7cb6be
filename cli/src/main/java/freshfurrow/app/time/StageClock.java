package freshfurrow.app.time;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** Measures what each stage of the work takes. */
public final class StageClock {
    private final long startNs = System.nanoTime();
    private final Map<Stage, Duration> stages = new EnumMap<>(Stage.class);
    private long stageBeganNs = startNs;

    /** A reading of {@link System#nanoTime} at the start. */
    public long startNs() {
        return startNs;
    }

    /** Puts the time since the last stage ended down to one, which may have been worked on before. */
    public void endOf(Stage stage) {
        long nowNs = System.nanoTime();
        stages.merge(stage, Duration.ofNanos(nowNs - stageBeganNs), Duration::plus);
        stageBeganNs = nowNs;
    }

    /** What was taken until the last stage ended. */
    public TimeTaken taken() {
        return new TimeTaken(
                Duration.ofNanos(stageBeganNs - startNs), Collections.unmodifiableMap(new EnumMap<>(stages)));
    }
}
