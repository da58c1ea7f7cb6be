package freshfurrow.cli.export;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;

/**
 * What files tell of the work on fields besides when and by whom. Files of seasons in which all fields are planted with extract tell neither,
 * so that programs that read them find what they know.
 *
 * @param work whether fields are planted or sprayed
 * @param withoutExtract whether they may be planted without extract
 */
record Told(boolean work, boolean withoutExtract) {
    static Told of(Season season, Plan plan) {
        return new Told(
                season.fields().stream().anyMatch(field -> field.work() != Work.PLANT)
                        || plan.planters().values().stream().anyMatch(planter -> planter.work() != Work.PLANT),
                season.goals().untreatedDays().isPresent() || plan.totals().untreatedHa() > 0);
    }

    boolean either() {
        return work || withoutExtract;
    }
}
