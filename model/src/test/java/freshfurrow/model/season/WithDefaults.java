package freshfurrow.model.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Parts of a season of which only that is said which a season file may not leave out. */
public final class WithDefaults {
    private WithDefaults() {}

    /** A recipe whose loads may be planted up to their use-by. */
    public static Recipe recipe(String id, double mixLPerHa, double compostKgPerHa, int holdS) {
        return new Recipe(id, mixLPerHa, compostKgPerHa, holdS, OptionalInt.of(0));
    }

    public static Planter planter(
            String id,
            double widthM,
            double rowSpacingM,
            double speedMPerS,
            double fieldEfficiency,
            double tankL,
            double roadSpeedMPerS,
            int fillSetupS,
            int moveTimeS,
            String at,
            WorkHours hours) {
        return new Planter(
                id,
                widthM,
                rowSpacingM,
                speedMPerS,
                fieldEfficiency,
                tankL,
                Planter.USUAL_LEAST_FILL,
                roadSpeedMPerS,
                fillSetupS,
                moveTimeS,
                0,
                0,
                OptionalInt.empty(),
                at,
                hours);
    }

    /** A water point at which hooking up takes no time of its own. */
    public static WaterPoint waterPoint(
            String id,
            Optional<GeoPoint> at,
            double flowLPerS,
            int hoses,
            WorkHours hours,
            OptionalDouble dailyLimitL,
            int treatmentS) {
        return new WaterPoint(id, at, flowLPerS, hoses, hours, dailyLimitL, treatmentS, 0);
    }

    public static Rig rig(
            String id,
            double drumL,
            double batchCompostKg,
            int batchTimeS,
            int cleanTimeS,
            double nurseTankL,
            double transferLPerS,
            double roadSpeedMPerS,
            OptionalDouble payloadKg,
            OptionalDouble bucketKg,
            ExtractAt extractAt,
            String at,
            WorkHours hours) {
        return new Rig(
                id,
                drumL,
                batchCompostKg,
                batchTimeS,
                OptionalInt.empty(),
                cleanTimeS,
                0,
                0,
                nurseTankL,
                transferLPerS,
                roadSpeedMPerS,
                payloadKg,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Rig.USUAL_LOADING_MIN_PER_KG,
                bucketKg,
                extractAt,
                at,
                hours);
    }

    public static Field field(
            String id,
            String name,
            double areaHa,
            Optional<GeoPoint> at,
            List<List<GeoPoint>> outline,
            String crop,
            DateWindow window,
            String recipe,
            Drainage drainage,
            double lateWeight,
            Set<String> planters) {
        return new Field(
                id,
                name,
                areaHa,
                at,
                outline,
                crop,
                window,
                recipe,
                drainage,
                lateWeight,
                1,
                planters,
                Work.PLANT,
                List.of(),
                Fixed.NOT);
    }
}
