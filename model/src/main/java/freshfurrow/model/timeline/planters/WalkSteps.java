package freshfurrow.model.timeline.planters;

import freshfurrow.model.timeline.state.PlanterDays;
import java.util.Arrays;

/** When a {@link Walk} sets off for fields and what it plants, in order: what it has done by the day is told only once it is made true. */
final class WalkSteps {
    private static final int OFF = -1;

    private int[] field = new int[8];
    private int[] start = new int[8];
    private long[] dm2 = new long[8];
    private int count;

    void none() {
        count = 0;
    }

    void setOff(int s) {
        planted(OFF, s, 0);
    }

    void planted(int plantedField, int s, long area) {
        if (count == field.length) {
            field = Arrays.copyOf(field, 2 * count);
            start = Arrays.copyOf(start, 2 * count);
            dm2 = Arrays.copyOf(dm2, 2 * count);
        }
        field[count] = plantedField;
        start[count] = s;
        dm2[count++] = area;
    }

    /** When the last piece was begun; -1 when nothing was planted. */
    int lastPlantedS() {
        for (int i = count - 1; i >= 0; i--) {
            if (field[i] != OFF) {
                return start[i];
            }
        }
        return -1;
    }

    void tell(int planter, PlanterDays days) {
        for (int i = 0; i < count; i++) {
            if (field[i] == OFF) {
                days.left(planter, start[i]);
            } else {
                days.planted(planter, field[i], start[i], dm2[i]);
            }
        }
    }
}
