package freshfurrow.model.season;

import java.util.OptionalInt;

/** A planter to be made out of another one, of which all stays as it was but for what is said. */
public final class PlanterChange {
    private String id;
    private double widthM;
    private double rowSpacingM;
    private double speedMPerS;
    private double fieldEfficiency;
    private double tankL;
    private double leastFill;
    private double roadSpeedMPerS;
    private int fillSetupS;
    private int moveTimeS;
    private int overtimeS;
    private int flushS;
    private OptionalInt longestWaitS;
    private String at;
    private WorkHours hours;

    PlanterChange(Planter from) {
        id = from.id();
        widthM = from.widthM();
        rowSpacingM = from.rowSpacingM();
        speedMPerS = from.speedMPerS();
        fieldEfficiency = from.fieldEfficiency();
        tankL = from.tankL();
        leastFill = from.leastFill();
        roadSpeedMPerS = from.roadSpeedMPerS();
        fillSetupS = from.fillSetupS();
        moveTimeS = from.moveTimeS();
        overtimeS = from.overtimeS();
        flushS = from.flushS();
        longestWaitS = from.longestWaitS();
        at = from.at();
        hours = from.hours();
    }

    public PlanterChange id(String other) {
        id = other;
        return this;
    }

    public PlanterChange widthM(double other) {
        widthM = other;
        return this;
    }

    public PlanterChange rowSpacingM(double other) {
        rowSpacingM = other;
        return this;
    }

    public PlanterChange speedMPerS(double other) {
        speedMPerS = other;
        return this;
    }

    public PlanterChange fieldEfficiency(double other) {
        fieldEfficiency = other;
        return this;
    }

    public PlanterChange tankL(double other) {
        tankL = other;
        return this;
    }

    public PlanterChange leastFill(double other) {
        leastFill = other;
        return this;
    }

    public PlanterChange roadSpeedMPerS(double other) {
        roadSpeedMPerS = other;
        return this;
    }

    public PlanterChange fillSetupS(int other) {
        fillSetupS = other;
        return this;
    }

    public PlanterChange moveTimeS(int other) {
        moveTimeS = other;
        return this;
    }

    public PlanterChange overtimeS(int other) {
        overtimeS = other;
        return this;
    }

    public PlanterChange flushS(int other) {
        flushS = other;
        return this;
    }

    public PlanterChange longestWaitS(OptionalInt other) {
        longestWaitS = other;
        return this;
    }

    public PlanterChange at(String other) {
        at = other;
        return this;
    }

    public PlanterChange hours(WorkHours other) {
        hours = other;
        return this;
    }

    /**
     * The planter as it now is.
     *
     * @throws IllegalArgumentException when the parts do not make one
     */
    public Planter planter() {
        return new Planter(
                id,
                widthM,
                rowSpacingM,
                speedMPerS,
                fieldEfficiency,
                tankL,
                leastFill,
                roadSpeedMPerS,
                fillSetupS,
                moveTimeS,
                overtimeS,
                flushS,
                longestWaitS,
                at,
                hours);
    }
}
