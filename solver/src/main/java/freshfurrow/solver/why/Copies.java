package freshfurrow.solver.why;

import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WorkHours;
import java.util.OptionalDouble;

/** Machines and water points that are like others but for one figure. */
final class Copies {
    private Copies() {}

    static Planter with(Planter planter, WorkHours hours) {
        return new Planter(
                planter.id(),
                planter.widthM(),
                planter.rowSpacingM(),
                planter.speedMPerS(),
                planter.fieldEfficiency(),
                planter.tankL(),
                planter.roadSpeedMPerS(),
                planter.fillSetupS(),
                planter.moveTimeS(),
                planter.at(),
                hours);
    }

    static Rig with(Rig rig, int batchTimeS, WorkHours hours) {
        return new Rig(
                rig.id(),
                rig.drumL(),
                rig.batchCompostKg(),
                batchTimeS,
                rig.cleanTimeS(),
                rig.nurseTankL(),
                rig.transferLPerS(),
                rig.roadSpeedMPerS(),
                rig.payloadKg(),
                rig.bucketKg(),
                rig.extractAt(),
                rig.at(),
                hours);
    }

    static WaterPoint with(WaterPoint point, double flowLPerS, int hoses, OptionalDouble dailyLimitL) {
        return new WaterPoint(point.id(), point.at(), flowLPerS, hoses, point.hours(), dailyLimitL, point.treatmentS());
    }
}
