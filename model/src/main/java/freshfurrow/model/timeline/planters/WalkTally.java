package freshfurrow.model.timeline.planters;

import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.state.Tally;
import freshfurrow.model.timeline.tables.FieldTable;

/** What a {@link Walk} has brought so far. */
final class WalkTally {
    private final FieldTable fields;

    private int driveS;
    private int driveM;
    private long plantedDm2;
    private long earlyDm2Days;
    private long lateDm2Days;
    private long weightedLateDm2Days;
    private int finishS;
    private int movedFields;
    private int fixedKept;
    private int overtimeS;
    private long untreatedDm2;
    private long weightedUntreatedDm2;

    WalkTally(FieldTable fields) {
        this.fields = fields;
    }

    void reset() {
        driveS = 0;
        driveM = 0;
        plantedDm2 = 0;
        earlyDm2Days = 0;
        lateDm2Days = 0;
        weightedLateDm2Days = 0;
        finishS = 0;
        movedFields = 0;
        fixedKept = 0;
        overtimeS = 0;
        untreatedDm2 = 0;
        weightedUntreatedDm2 = 0;
    }

    void drove(int seconds, int metres) {
        driveS += seconds;
        driveM += metres;
    }

    /** A field is begun otherwise than it was promised to be. */
    void moved() {
        movedFields++;
    }

    /** A field is begun on the day that it is fixed to. */
    void kept() {
        fixedKept++;
    }

    /** What is told next of was planted past the day's last hours for so long. */
    void overtime(int seconds) {
        overtimeS += seconds;
    }

    void planted(int field, int start, int end, long dm2) {
        int day = start / Calendars.DAY_S;
        long late = dm2 * Math.max(0, day - fields.lastDay(field));
        plantedDm2 += dm2;
        earlyDm2Days += dm2 * day;
        lateDm2Days += late;
        weightedLateDm2Days += late * fields.lateWeight(field);
        finishS = end;
    }

    /** Part of what was told of is planted without extract. */
    void untreated(int field, long dm2) {
        untreatedDm2 += dm2;
        weightedUntreatedDm2 += dm2 * fields.extractWeight(field);
    }

    long plantedDm2() {
        return plantedDm2;
    }

    void addTo(Tally tally) {
        tally.add(Tally.DRIVE_S, driveS);
        tally.add(Tally.DRIVE_M, driveM);
        tally.add(Tally.MOVED_FIELDS, movedFields);
        tally.add(Tally.FIXED_KEPT, fixedKept);
        tally.add(Tally.PLANTED_DM2, plantedDm2);
        tally.add(Tally.EARLY_DM2_DAYS, earlyDm2Days);
        tally.add(Tally.LATE_DM2_DAYS, lateDm2Days);
        tally.add(Tally.WEIGHTED_LATE_DM2_DAYS, weightedLateDm2Days);
        tally.add(Tally.OVERTIME_S, overtimeS);
        tally.add(Tally.UNTREATED_DM2, untreatedDm2);
        tally.add(Tally.WEIGHTED_UNTREATED_DM2, weightedUntreatedDm2);
        tally.finished(finishS);
    }
}
