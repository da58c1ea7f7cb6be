package freshfurrow.model.season;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A rig to be made out of another one, of which all stays as it was but for what is said. */
public final class RigChange {
    private String id;
    private double drumL;
    private double batchCompostKg;
    private int batchTimeS;
    private OptionalInt leastBatchTime;
    private int cleanTimeS;
    private int setUpS;
    private int closeUpS;
    private double nurseTankL;
    private double transferLPerS;
    private double roadSpeedMPerS;
    private OptionalDouble payloadKg;
    private OptionalDouble emptyWeightKg;
    private OptionalDouble compostLoad;
    private double compostLoadingMinPerKg;
    private OptionalDouble bucketKg;
    private ExtractAt extractAt;
    private String at;
    private WorkHours hours;

    RigChange(Rig from) {
        id = from.id();
        drumL = from.drumL();
        batchCompostKg = from.batchCompostKg();
        batchTimeS = from.batchTimeS();
        leastBatchTime = from.leastBatchTime();
        cleanTimeS = from.cleanTimeS();
        setUpS = from.setUpS();
        closeUpS = from.closeUpS();
        nurseTankL = from.nurseTankL();
        transferLPerS = from.transferLPerS();
        roadSpeedMPerS = from.roadSpeedMPerS();
        payloadKg = from.payloadKg();
        emptyWeightKg = from.emptyWeightKg();
        compostLoad = from.compostLoad();
        compostLoadingMinPerKg = from.compostLoadingMinPerKg();
        bucketKg = from.bucketKg();
        extractAt = from.extractAt();
        at = from.at();
        hours = from.hours();
    }

    public RigChange id(String other) {
        id = other;
        return this;
    }

    public RigChange drumL(double other) {
        drumL = other;
        return this;
    }

    public RigChange batchCompostKg(double other) {
        batchCompostKg = other;
        return this;
    }

    public RigChange batchTimeS(int other) {
        batchTimeS = other;
        return this;
    }

    public RigChange leastBatchTime(OptionalInt other) {
        leastBatchTime = other;
        return this;
    }

    public RigChange cleanTimeS(int other) {
        cleanTimeS = other;
        return this;
    }

    public RigChange setUpS(int other) {
        setUpS = other;
        return this;
    }

    public RigChange closeUpS(int other) {
        closeUpS = other;
        return this;
    }

    public RigChange nurseTankL(double other) {
        nurseTankL = other;
        return this;
    }

    public RigChange transferLPerS(double other) {
        transferLPerS = other;
        return this;
    }

    public RigChange roadSpeedMPerS(double other) {
        roadSpeedMPerS = other;
        return this;
    }

    public RigChange payloadKg(OptionalDouble other) {
        payloadKg = other;
        return this;
    }

    public RigChange emptyWeightKg(OptionalDouble other) {
        emptyWeightKg = other;
        return this;
    }

    public RigChange compostLoad(OptionalDouble other) {
        compostLoad = other;
        return this;
    }

    public RigChange compostLoadingMinPerKg(double other) {
        compostLoadingMinPerKg = other;
        return this;
    }

    public RigChange bucketKg(OptionalDouble other) {
        bucketKg = other;
        return this;
    }

    public RigChange extractAt(ExtractAt other) {
        extractAt = other;
        return this;
    }

    public RigChange at(String other) {
        at = other;
        return this;
    }

    public RigChange hours(WorkHours other) {
        hours = other;
        return this;
    }

    /**
     * The rig as it now is.
     *
     * @throws IllegalArgumentException when the parts do not make one
     */
    public Rig rig() {
        return new Rig(
                id,
                drumL,
                batchCompostKg,
                batchTimeS,
                leastBatchTime,
                cleanTimeS,
                setUpS,
                closeUpS,
                nurseTankL,
                transferLPerS,
                roadSpeedMPerS,
                payloadKg,
                emptyWeightKg,
                compostLoad,
                compostLoadingMinPerKg,
                bucketKg,
                extractAt,
                at,
                hours);
    }
}
