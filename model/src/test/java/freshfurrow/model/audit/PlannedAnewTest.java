package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Random seasons planned anew at any moment, day or night, and again at a later one. */
class PlannedAnewTest {
    @Property(tries = 300)
    void theAuditFindsNothing(@ForAll long seed) {
        Random random = new Random(seed);
        ValidPlan plan = ValidPlan.ofRandomSeason(seed);
        LocalDateTime now = plan.whole().start();
        for (int i = 0; i < 2; i++) {
            now = later(plan.whole(), now, random);
            plan = plan.replanned(now);
            assertThat(findings(plan)).as("%s", plan).isEmpty();
        }
    }

    /** The time that is left for a rig to dump its mix is kept for closing it up. */
    @Example
    void mixThatNoHoursAreLeftForIsDumpedInNoTime() {
        theAuditFindsNothing(-980766);
    }

    private static LocalDateTime later(Season season, LocalDateTime now, Random random) {
        long seconds = Duration.between(now, season.end().minusDays(1)).toSeconds();
        return now.plusSeconds((long) (seconds * Math.pow(random.nextDouble(), 2)));
    }

    private static Iterable<Finding> findings(ValidPlan plan) {
        return Audit.check(plan.plan().start().orElseThrow().remaining(plan.whole()), plan.plan());
    }
}
