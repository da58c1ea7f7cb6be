package freshfurrow.model.season;

import java.util.Optional;
import java.util.OptionalDouble;

/** A water point to be made out of another one, of which all stays as it was but for what is said. */
public final class WaterPointChange {
    private String id;
    private Optional<GeoPoint> at;
    private double flowLPerS;
    private int hoses;
    private WorkHours hours;
    private OptionalDouble dailyLimitL;
    private int treatmentS;
    private int hookUpS;

    WaterPointChange(WaterPoint from) {
        id = from.id();
        at = from.at();
        flowLPerS = from.flowLPerS();
        hoses = from.hoses();
        hours = from.hours();
        dailyLimitL = from.dailyLimitL();
        treatmentS = from.treatmentS();
        hookUpS = from.hookUpS();
    }

    public WaterPointChange id(String other) {
        id = other;
        return this;
    }

    public WaterPointChange at(Optional<GeoPoint> other) {
        at = other;
        return this;
    }

    public WaterPointChange flowLPerS(double other) {
        flowLPerS = other;
        return this;
    }

    public WaterPointChange hoses(int other) {
        hoses = other;
        return this;
    }

    public WaterPointChange hours(WorkHours other) {
        hours = other;
        return this;
    }

    public WaterPointChange dailyLimitL(OptionalDouble other) {
        dailyLimitL = other;
        return this;
    }

    public WaterPointChange treatmentS(int other) {
        treatmentS = other;
        return this;
    }

    public WaterPointChange hookUpS(int other) {
        hookUpS = other;
        return this;
    }

    /**
     * The water point as it now is.
     *
     * @throws IllegalArgumentException when the parts do not make one
     */
    public WaterPoint waterPoint() {
        return new WaterPoint(id, at, flowLPerS, hoses, hours, dailyLimitL, treatmentS, hookUpS);
    }
}
