package freshfurrow.model.timeline.planters;

import freshfurrow.model.timeline.state.HoursAtWork;
import freshfurrow.model.timeline.state.PlanterDays;
import java.util.Arrays;

/** When a {@link Walk} sets off for fields and what it plants, in order: what it has done by the day is told only once it is made true. */
final class WalkSteps {
    private static final int OFF = -1;

    private int[] field = new int[8];
    private int[] start = new int[8];
    private int[] end = new int[8];
    private long[] dm2 = new long[8];
    private int count;

    void none() {
        count = 0;
    }

    void setOff(int s, int arrival) {
        planted(OFF, s, arrival, 0);
    }

    void planted(int plantedField, int s, int until, long area) {
        if (count == field.length) {
            field = Arrays.copyOf(field, 2 * count);
            start = Arrays.copyOf(start, 2 * count);
            end = Arrays.copyOf(end, 2 * count);
            dm2 = Arrays.copyOf(dm2, 2 * count);
        }
        field[count] = plantedField;
        start[count] = s;
        end[count] = until;
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

    /** @param applies whether mix goes into the ground */
    void tell(int planter, PlanterDays days, HoursAtWork hours, boolean applies) {
        for (int i = 0; i < count; i++) {
            if (field[i] == OFF) {
                days.left(planter, start[i]);
                hours.planterWorked(planter, start[i], end[i]);
            } else {
                days.planted(planter, field[i], start[i], dm2[i]);
                if (applies) {
                    hours.applied(planter, start[i], end[i]);
                } else {
                    hours.planterWorked(planter, start[i], end[i]);
                }
            }
        }
    }
}
