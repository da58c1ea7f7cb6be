package freshfurrow.model.audit;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.List;

/** Checks a plan against its season from first principles. */
public final class Audit {
    private Audit() {}

    /**
     * Everything in the plan that breaks a rule; empty when the plan holds. However broken the plan is, this only
     * reports and never throws.
     */
    public static List<Finding> check(Season season, Plan plan) {
        var evidence = new Evidence(season, plan);
        new SeasonFacts(evidence).check();
        new References(evidence).check();
        new StartRecords(evidence).check();
        new NumberRules(evidence).check();
        new MachineRules(evidence).check();
        new Mounted(evidence).check();
        new DayRoutines(evidence).check();
        new Flushes(evidence).check();
        new Fields(evidence).check();
        new PlantingRules(evidence).check();
        new WithoutExtract(evidence).check();
        new Overtime(evidence).check();
        new Waits(evidence).check();
        new Loads(evidence).check();
        new SmallFills(evidence).check();
        new ComingOut(evidence).check();
        new MixBatches(evidence).check();
        new Batches(evidence).check();
        new EvenBatches(evidence).check();
        new Compost(evidence).check();
        new FetchedCompost(evidence).check();
        new WaterRules(evidence).check();
        new Totals(evidence).check();
        new Bounds(evidence).check();
        return evidence.findings();
    }
}
