package freshfurrow.app.input;

import freshfurrow.app.refusal.FileFailure;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/** The loads of all plans that were ever made for a season: of the plan there is, and of those kept in the folder plans beside it. */
public final class KnownLoads {
    private static final String KEPT = "plans";

    private KnownLoads() {}

    /**
     * Their ids, of a plan that may be of the season as it was before.
     *
     * @throws Refused when a plan cannot be read
     */
    public static Set<String> ofAny(GivenPlan plan) {
        Path file = plan.file();
        Set<String> ids = new HashSet<>();
        if (Files.exists(file)) {
            add(plan.read(), ids);
        }
        addKept(file, ids);
        return ids;
    }

    /**
     * Their ids; none when there is no plan. Plans that are kept may be of the season as it was before.
     *
     * @throws Refused when a plan cannot be read, or the plan is of another season
     */
    public static Set<String> of(Reading.Valid season, GivenPlan plan) {
        Path file = plan.file();
        if (Files.exists(file)) {
            PlanOrigin.mustBeOf(season, file, plan.read());
        }
        return ofAny(plan);
    }

    private static void addKept(Path file, Set<String> ids) {
        Path kept = file.resolveSibling(KEPT);
        if (Files.isDirectory(kept)) {
            try (DirectoryStream<Path> plans = Files.newDirectoryStream(kept, "*.json")) {
                plans.forEach(one -> add(new GivenPlan(one).read(), ids));
            } catch (IOException e) {
                throw new Refused(new InputRefusal.UnreadablePlans(kept, FileFailure.reason(e)));
            }
        }
    }

    private static void add(Plan plan, Set<String> ids) {
        plan.loads().stream().map(Plan.Load::id).forEach(ids::add);
    }
}
