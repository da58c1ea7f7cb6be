package freshfurrow.solver.example;

import java.lang.management.ManagementFactory;

/** Java as growers have it. Tests do without the optimising compiler, and searches would be half as fast. */
public final class OptimisingJvm {
    private OptimisingJvm() {}

    /**
     * Lets a benchmark go on only there.
     *
     * @throws IllegalStateException where the optimising compiler is left out
     */
    public static void require() {
        if (ManagementFactory.getRuntimeMXBean().getInputArguments().contains("-XX:TieredStopAtLevel=1")) {
            throw new IllegalStateException(
                    "what is measured here would be half as fast as it is; run it with -P bench");
        }
    }
}
