package freshfurrow.model.learn;

import java.util.*;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import org.junit.jupiter.api.Test;

class RecoveredTest {
    @Test
    void probe() {
        for (String name : List.of("spring", "metric", "mixed-farm", "weather-spring")) {
            Season season = Farms.season(name);
            Plan plan = Farms.plan(season);
            Map<String, int[]> counts = new TreeMap<>();
            for (long seed = 0; seed < 400; seed++) {
                SimulatedLog simulated = new SimulatedLog(season, plan, seed);
                long t0 = System.nanoTime();
                Lessons lessons = Learning.of(season, simulated.log());
                if (seed == 0) System.out.println(name + " " + lessons.leftOut() + " " + (System.nanoTime() - t0) / 1e6);
                for (Lesson lesson : lessons.lessons()) {
                    int[] c = counts.computeIfAbsent(lesson.figure() + " " + lesson.of(), k -> new int[6]);
                    c[0]++;
                    c[4] += lesson.observations(); c[5] += lesson.groups();
                    lesson.estimate().ifPresent(e -> {
                        c[1]++;
                        double truth = simulated.truth(lesson);
                        if (truth >= e.low() && truth <= e.high()) c[2]++;
                        if (lesson.isToldApart()) c[3]++;
                        if (seedPrint(lesson)) System.out.printf("  %s truth %.4f mean %.4f (%.4f..%.4f) file %.4f spread %.3f%n", lesson.of(), truth, e.mean(), e.low(), e.high(), lesson.fileFigure(), e.spread().orElse(-1));
                    });
                }
            }
            counts.forEach((k, c) -> System.out.printf("%s %s: n=%d est=%d covered=%.3f told=%.3f obs=%.1f groups=%.1f%n", name, k, c[0], c[1], c[2] / (double) c[1], c[3] / (double) c[1], c[4] / 400.0, c[5] / 400.0));
        }
    }
    static int printed = 0;
    static boolean seedPrint(Lesson l) { return l.figure() == Taught.DRYING && printed++ < 8; }
}
