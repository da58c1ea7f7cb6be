package freshfurrow.app.plan;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.PlanOrigin;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import java.nio.file.Path;
import java.util.List;

/**
 * A plan held against a season.
 *
 * @param file that the plan was read from
 * @param season what was left of it when the plan was made
 * @param ofThisSeason whether the plan was made from that season as it is now, with its variants
 * @param findings what is wrong with the plan
 */
public record AuditedPlan(Path file, Season season, Plan plan, boolean ofThisSeason, List<Finding> findings) {
    public AuditedPlan {
        findings = List.copyOf(findings);
    }

    /**
     * Audits the plan.
     *
     * @throws Refused when season or plan cannot be read, or the plan cannot begin in that season
     */
    public static AuditedPlan of(GivenSeason givenSeason, GivenPlan givenPlan) {
        Reading.Valid read = givenSeason.read();
        Plan plan = givenPlan.readToAudit();
        Path file = givenPlan.file();
        boolean ofThisSeason = PlanOrigin.isOf(read, plan);
        Season madeFor = madeFor(read, file, plan, ofThisSeason);
        return new AuditedPlan(file, madeFor, plan, ofThisSeason, Audit.check(madeFor, plan));
    }

    private static Season madeFor(Reading.Valid read, Path file, Plan plan, boolean ofThisSeason) {
        try {
            return SeasonOfPlan.whatItWasMadeFor(file, plan, read.season());
        } catch (Refused refused) {
            if (!ofThisSeason && refused.refusal() instanceof InputRefusal.ImpossibleStart) {
                throw new Refused(new PlanRefusal.BeginsInAnotherSeason(
                        file, read.season().name(), plan.season()));
            }
            throw refused;
        }
    }
}
