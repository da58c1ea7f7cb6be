package freshfurrow.model.learn;

import static freshfurrow.model.learn.LearnFarm.at;
import static freshfurrow.model.learn.LearnFarm.batch;
import static freshfurrow.model.learn.LearnFarm.planted;
import static freshfurrow.model.learn.LearnFarm.withoutExtract;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.log.Fact;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Figures worked out by hand. */
class LearningTest {
    private final LearnFarm farm = new LearnFarm();

    /**
     * Full batches of 1,000 s took 1,000, 1,100 .. 1,500 s on six days. Median: sqrt(1,200 x 1,300) = 1,249.0. Logarithms are 0.2224, 0.1271, 0.0400,
     * 0.0400, 0.1141 and 0.1831 from the median's, so 0.1206 in the middle, and s = 1.4826 x 0.1206 = 0.1787. Mean: 1,249.0 x exp(0.1787^2 / 2) =
     * 1,269.1. Of six the interval is from the least, 1,000 x 1.0161, to the largest, 1,500 x 1.0161. Varies: sqrt(exp(0.1787^2) - 1) = 0.180.
     */
    @Test
    void aBatchTimeIsTheMeanOfWhatBatchesTook() {
        for (int day = 0; day < 6; day++) {
            farm.add(at(day, 9, 0), batch(20), 1000 + 100 * day);
        }

        Lesson lesson = farm.lesson(Taught.BATCH_TIME, "R1");

        assertThat(lesson.observations()).isEqualTo(6);
        assertThat(lesson.groups()).isEqualTo(6);
        Estimate estimate = lesson.estimate().orElseThrow();
        assertThat(estimate.median()).isCloseTo(1249.0, within(0.05));
        assertThat(estimate.mean()).isCloseTo(1269.1, within(0.1));
        assertThat(estimate.low()).isCloseTo(1016.1, within(0.1));
        assertThat(estimate.high()).isCloseTo(1524.1, within(0.1));
        assertThat(estimate.spread()).hasValueCloseTo(0.180, within(0.0005));
        assertThat(lesson.differs()).isTrue();
    }

    /** A quarter of all batches were half full and took 550 s, as a full one at 1,100 s: nothing varies, so that mean and median are one. */
    @Test
    void aSmallerBatchCountsByItsShare() {
        for (int day = 0; day < 6; day++) {
            farm.add(at(day, 9, 0), batch(20), 1100).add(at(day, 10, 0), batch(10), 550);
        }

        assertEstimate(Taught.BATCH_TIME, "R1", 1100);
    }

    /** 6 kg of 20 kg would take 300 s; no batch takes less than a third of 1,000 s, rounded up. */
    @Test
    void aBatchForWhichTheLeastTimeCountsTeachesNothing() {
        farm.add(at(0, 9, 0), batch(6), 340);

        assertThat(farm.lesson(Taught.BATCH_TIME, "R1").observations()).isZero();
        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.SMALL_BATCH, 1));
    }

    /** 1,000 L in 400 s. */
    @Test
    void aTransferRateIsVolumeByTime() {
        for (int day = 0; day < 6; day++) {
            farm.add(at(day, 9, 0), new Fact.Transferred("R1", 1000, Optional.of("L" + day)), 400);
        }

        assertEstimate(Taught.TRANSFER_RATE, "R1", 2.5);
    }

    /** 1 ha in 1,250 s are 8 m2/s, with extract and without. */
    @Test
    void aFieldCapacityIsAreaByTimeWithExtractOrWithout() {
        for (int day = 0; day < 6; day++) {
            farm.add(at(day, 9, 0), planted(1, "L1"), 1250).add(at(day, 10, 0), withoutExtract(2), 2500);
        }

        Lesson lesson = farm.lesson(Taught.FIELD_CAPACITY, "P1");
        assertThat(lesson.observations()).isEqualTo(12);
        assertEstimate(Taught.FIELD_CAPACITY, "P1", 8);
    }

    /** 6 km in 500 s are 12 m/s. */
    @Test
    void aRoadSpeedIsTheRoadOfTheSeasonByTime() {
        for (int day = 0; day < 6; day++) {
            farm.add(at(day, 9, 0), new Fact.Driven("R1", "yard", "A"), 500);
            farm.add(at(day, 10, 0), new Fact.Driven("P1", "yard", "B"), 1200);
        }

        assertEstimate(Taught.ROAD_SPEED, "R1", 12);
        Lesson asWritten = farm.lesson(Taught.ROAD_SPEED, "P1");
        assertThat(asWritten.estimate())
                .hasValueSatisfying(estimate -> assertThat(estimate.mean()).isCloseTo(5, within(1e-9)));
    }

    @Test
    void fiveDaysAreTooFewHoweverManyBatchesTheyHave() {
        for (int day = 0; day < 5; day++) {
            for (int hour = 7; hour < 17; hour++) {
                farm.add(at(day, hour, 0), batch(20), 1300);
            }
        }

        Lesson lesson = farm.lesson(Taught.BATCH_TIME, "R1");

        assertThat(lesson.observations()).isEqualTo(50);
        assertThat(lesson.groups()).isEqualTo(5);
        assertThat(lesson.estimate()).isEmpty();
        assertThat(lesson.differs()).isFalse();
    }

    @Test
    void anEmptyLogTeachesNothing() {
        Lessons lessons = farm.lessons();

        assertThat(lessons.lessons()).extracting(Lesson::observations).containsOnly(0);
        assertThat(lessons.leftOut()).isEmpty();
        assertThat(lessons.differing()).isEmpty();
    }

    /**
     * Six days with 900, 1,000, 1,100, 1,200, 1,300 and 1,400 s first, and 1,150 s later each day: the twelve have the median 1,150. Logarithms of the first
     * are 0.2451, 0.1398, 0.0445, 0.0426, 0.1226 and 0.1967 from it: in the middle 0.1312, from 0.0426 to 0.2451. Times 1.4826: 0.1945, 0.0631 and
     * 0.3634; sqrt(exp(s^2) - 1) is 0.196, 0.063 and 0.376.
     */
    @Test
    void aSpreadIsLearnedFromTheFirstPieceOfEachDayWhereTheSeasonFileHasSpreads() {
        for (int day = 0; day < 6; day++) {
            farm.add(at(day, 9, 0), batch(20), 900 + 100 * day).add(at(day, 10, 0), batch(20), 1150);
        }
        Season season = LearnFarm.SEASON
                .change()
                .spread(Optional.of(new TimeSpread(0.05, 0.1, 0.1, 0.1, Optional.empty())))
                .season();

        Lesson lesson = LearnFarm.lesson(farm.lessons(season), Taught.SPREAD, "batchTime");

        assertThat(lesson.observations()).isEqualTo(6);
        Estimate estimate = lesson.estimate().orElseThrow();
        assertThat(estimate.mean()).isCloseTo(0.196, within(0.001));
        assertThat(estimate.low()).isCloseTo(0.063, within(0.001));
        assertThat(estimate.high()).isCloseTo(0.376, within(0.001));
        assertThat(lesson.differs()).isTrue();
        assertThat(farm.lessons().lessons()).extracting(Lesson::figure).doesNotContain(Taught.SPREAD);
    }

    private void assertEstimate(Taught figure, String of, double expected) {
        Lesson lesson = farm.lesson(figure, of);
        assertThat(lesson.estimate()).hasValueSatisfying(estimate -> {
            assertThat(estimate.mean()).isCloseTo(expected, within(1e-9));
            assertThat(estimate.median()).isCloseTo(expected, within(1e-9));
            assertThat(estimate.low()).isCloseTo(expected, within(1e-9));
            assertThat(estimate.high()).isCloseTo(expected, within(1e-9));
        });
        assertThat(lesson.differs()).isTrue();
    }
}
