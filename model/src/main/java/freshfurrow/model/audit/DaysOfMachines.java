package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.season.Field;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What machines come out for, day by day. */
final class DaysOfMachines {
    private final Evidence evidence;

    DaysOfMachines(Evidence evidence) {
        this.evidence = evidence;
    }

    private record Piece(String planter, String field, long day) {}

    private record MachineDay(String machine, long day) {}

    /** Days of a planter on which it plants less than the season's least piece of a field that is larger than that. */
    int scraps() {
        double leastHa = evidence.season.goals().leastPieceHa();
        Map<Piece, Double> pieces = new HashMap<>();
        for (Evidence.Done<Activity.Planting> done : evidence.all(Activity.Planting.class)) {
            Activity.Planting plant = done.activity();
            pieces.merge(new Piece(done.machine(), plant.field(), day(plant)), plant.areaHa(), Double::sum);
        }
        return (int) pieces.entrySet().stream()
                .filter(piece -> piece.getValue() < leastHa - Evidence.AREA_ROUNDING_HA / 2)
                .filter(piece -> isLarger(piece.getKey().field(), leastHa))
                .count();
    }

    private boolean isLarger(String id, double leastHa) {
        Field field = evidence.fields.get(id);
        return field != null && field.areaHa() > leastHa + Evidence.AREA_ROUNDING_HA / 2;
    }

    /** Days of a machine on which it drives, and is not filled, plants nothing or fills no planter. */
    int callOuts() {
        Set<MachineDay> out = new HashSet<>();
        evidence.all(Activity.Move.class).stream()
                .filter(done -> !done.activity().from().equals(done.activity().to()))
                .forEach(done -> out.add(new MachineDay(done.machine(), day(done.activity()))));
        for (Class<? extends Activity> work :
                List.of(Activity.Fill.class, Activity.Planting.class, Activity.Transfer.class)) {
            evidence.all(work).forEach(done -> out.remove(new MachineDay(done.machine(), day(done.activity()))));
        }
        return out.size();
    }

    private long day(Activity activity) {
        return evidence.start(activity) / DAY_S;
    }
}
