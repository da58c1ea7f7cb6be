package freshfurrow.model.season;

import java.util.Optional;

/** A sprayer to be made out of another one, of which all stays as it was but for what is said. */
public final class SprayerChange {
    private String id;
    private Swath swath;
    private double tankL;
    private double leastFill;
    private double roadSpeedMPerS;
    private int fillSetupS;
    private int moveTimeS;
    private int flushS;
    private String at;
    private WorkHours hours;
    private WorkHours sprayHours;
    private Optional<String> on;

    SprayerChange(Sprayer from) {
        id = from.id();
        swath = from.swath();
        tankL = from.tankL();
        leastFill = from.leastFill();
        roadSpeedMPerS = from.roadSpeedMPerS();
        fillSetupS = from.fillSetupS();
        moveTimeS = from.moveTimeS();
        flushS = from.flushS();
        at = from.at();
        hours = from.hours();
        sprayHours = from.sprayHours();
        on = from.on();
    }

    public SprayerChange id(String other) {
        id = other;
        return this;
    }

    public SprayerChange swath(Swath other) {
        swath = other;
        return this;
    }

    public SprayerChange tankL(double other) {
        tankL = other;
        return this;
    }

    public SprayerChange leastFill(double other) {
        leastFill = other;
        return this;
    }

    public SprayerChange roadSpeedMPerS(double other) {
        roadSpeedMPerS = other;
        return this;
    }

    public SprayerChange fillSetupS(int other) {
        fillSetupS = other;
        return this;
    }

    public SprayerChange moveTimeS(int other) {
        moveTimeS = other;
        return this;
    }

    public SprayerChange flushS(int other) {
        flushS = other;
        return this;
    }

    public SprayerChange at(String other) {
        at = other;
        return this;
    }

    public SprayerChange hours(WorkHours other) {
        hours = other;
        return this;
    }

    public SprayerChange sprayHours(WorkHours other) {
        sprayHours = other;
        return this;
    }

    public SprayerChange on(Optional<String> other) {
        on = other;
        return this;
    }

    /**
     * The sprayer as it now is.
     *
     * @throws IllegalArgumentException when the parts do not make one
     */
    public Sprayer sprayer() {
        return new Sprayer(
                id, swath, tankL, leastFill, roadSpeedMPerS, fillSetupS, moveTimeS, flushS, at, hours, sprayHours, on);
    }
}
