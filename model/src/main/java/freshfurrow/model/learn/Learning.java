package freshfurrow.model.learn;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;

/** Holds the log of a season against its season file. */
public final class Learning {
    /** With fewer days or rains no interval of a median has a chance of 95 %. */
    public static final int LEAST_GROUPS = 6;

    private Learning() {}

    /**
     * What a log teaches.
     *
     * @param season as its files tell it
     * @param log that was read for that season
     */
    public static Lessons of(Season season, SeasonLog log) {
        LeftOutCounts leftOut = new LeftOutCounts();
        List<Entry> standing = log.standing();
        leftOut.count(LeftOut.VOID, (int) log.entries().stream()
                .filter(entry -> entry.fact() instanceof Fact.Voided)
                .count());
        Paces paces = new Paces(season, leftOut);
        SoundWork.of(season, standing, leftOut).forEach(paces::add);
        List<Lesson> lessons = new ArrayList<>();
        for (Rig rig : season.rigs()) {
            lessons.add(paces.lesson(Taught.BATCH_TIME, rig.id(), rig.batchTimeS()));
            lessons.add(paces.lesson(Taught.TRANSFER_RATE, rig.id(), rig.transferLPerS()));
            lessons.add(paces.lesson(Taught.ROAD_SPEED, rig.id(), rig.roadSpeedMPerS()));
        }
        for (Applicator applicator : season.applicators()) {
            lessons.add(paces.lesson(Taught.FIELD_CAPACITY, applicator.id(), applicator.fieldCapacityM2PerS()));
            if (applicator.on().isEmpty()) {
                lessons.add(paces.lesson(Taught.ROAD_SPEED, applicator.id(), applicator.roadSpeedMPerS()));
            }
        }
        boolean byRule = season.ground().isEmpty();
        if (byRule) {
            lessons.addAll(new DryGround(season, standing, leftOut).lessons());
        }
        season.spread().ifPresent(spread -> {
            lessons.add(paces.spread(Taught.BATCH_TIME, "batchTime", spread.batch()));
            lessons.add(paces.spread(Taught.TRANSFER_RATE, "transfer", spread.transfer()));
            lessons.add(paces.spread(Taught.ROAD_SPEED, "drive", spread.drive()));
            lessons.add(paces.spread(Taught.FIELD_CAPACITY, "planting", spread.planting()));
        });
        return new Lessons(lessons, leftOut.all(), byRule);
    }
}
