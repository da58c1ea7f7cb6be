package freshfurrow.model.learn;

import static freshfurrow.model.learn.LearnFarm.at;
import static freshfurrow.model.learn.LearnFarm.batch;
import static freshfurrow.model.learn.LearnFarm.fit;
import static freshfurrow.model.learn.LearnFarm.unfit;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Fact;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class ManyEntriesTest {
    private static final int DAYS = 50;

    /** 50 days of 96 batches of 5 minutes each, and of loads that all have the same name: 5,000 entries, in less than two seconds on a busy machine. */
    @Test
    @Timeout(2)
    void fiveThousandEntriesTakeNoTime() {
        LearnFarm farm = new LearnFarm();
        for (int day = 0; day < DAYS; day++) {
            for (int i = 0; i < 96; i++) {
                farm.add(at(day, 0, 0).plus(Duration.ofMinutes(15L * i + 10)), batch(20, "all"), 300);
            }
            farm.add(at(day, 5, 0), new Fact.RainMeasured(20))
                    .add(at(day, 7, 0), unfit("A"))
                    .add(at(day, 8, 0), fit("B"))
                    .add(at(day, 23, 58), new Fact.Transferred("R1", 500, Optional.of("L" + day)), 60);
        }

        Lessons lessons = farm.lessons();

        assertThat(LearnFarm.lesson(lessons, Taught.BATCH_TIME, "R1").observations())
                .isEqualTo(DAYS * 96);
        assertThat(LearnFarm.lesson(lessons, Taught.DRYING, "well").groups()).isEqualTo(DAYS);
        assertThat(lessons.leftOut()).isEmpty();
    }
}
