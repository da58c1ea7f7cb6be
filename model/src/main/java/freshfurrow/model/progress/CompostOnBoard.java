package freshfurrow.model.progress;

import freshfurrow.model.log.Fact;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a rig that fetches compost has of it on board, by lot in the order in which it was loaded. */
final class CompostOnBoard {
    private final Map<String, Double> kgByLot = new LinkedHashMap<>();

    static CompostOnBoard of(Standing.OfRig standing) {
        CompostOnBoard onBoard = new CompostOnBoard();
        standing.compostKg().forEach(onBoard::load);
        return onBoard;
    }

    /**
     * What a rig has loaded by a plan, less what its logged batches took.
     *
     * @param logged batches of the rig since the plan begins
     * @param until when the plan was followed last
     */
    static CompostOnBoard less(List<Fact.BatchMade> logged, Plan plan, String rig, LocalDateTime until) {
        CompostOnBoard onBoard = plan.start()
                .flatMap(start -> Optional.ofNullable(start.standing().rigs().get(rig)))
                .map(CompostOnBoard::of)
                .orElseGet(CompostOnBoard::new);
        for (Activity activity : plan.rigs().get(rig).activities()) {
            if (activity instanceof Activity.LoadCompost loading
                    && loading.start().isBefore(until)) {
                onBoard.load(loading.lot(), loading.kg());
            }
        }
        logged.forEach(batch -> onBoard.use(batch.kgByLot()));
        return onBoard;
    }

    void load(String lot, double kg) {
        kgByLot.merge(lot, kg, Double::sum);
    }

    /** Takes what batches took, of each lot no more than there is: scales and piles differ. */
    void use(Map<String, Double> lots) {
        lots.forEach((lot, kg) -> kgByLot.computeIfPresent(lot, (id, onBoard) -> onBoard - kg));
    }

    /** Nothing of the lot is of use any more. */
    void drop(String lot) {
        kgByLot.remove(lot);
    }

    /** Kilograms by lot, in whole grams; lots of which nothing is left are not among them. */
    Map<String, Double> kg() {
        Map<String, Double> left = new LinkedHashMap<>();
        kgByLot.forEach((lot, kg) -> {
            double rounded = Rounded.kilograms(kg);
            if (rounded > 0) {
                left.put(lot, rounded);
            }
        });
        return left;
    }
}
