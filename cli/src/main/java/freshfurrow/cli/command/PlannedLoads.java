package freshfurrow.cli.command;

import freshfurrow.model.plan.Plan;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/** The loads of all plans that were ever made for a season: of the plan there is, and of those kept in the folder plans beside it. */
final class PlannedLoads {
    private static final String KEPT = "plans";

    private PlannedLoads() {}

    /**
     * Their ids; none when there is no plan.
     *
     * @param plan a plan file, or a folder that holds plan.json
     * @throws Refusal when a plan cannot be read
     */
    static Set<String> of(Path plan) {
        Path file = PlanArgument.file(plan);
        Set<String> ids = new HashSet<>();
        if (Files.exists(file)) {
            add(file, ids);
        }
        Path kept = file.resolveSibling(KEPT);
        if (Files.isDirectory(kept)) {
            try (DirectoryStream<Path> plans = Files.newDirectoryStream(kept, "*.json")) {
                plans.forEach(one -> add(one, ids));
            } catch (IOException e) {
                throw new Refusal(kept + ": cannot be read (" + Failures.reason(e) + ")");
            }
        }
        return ids;
    }

    private static void add(Path file, Set<String> ids) {
        PlanArgument.read(file).loads().stream().map(Plan.Load::id).forEach(ids::add);
    }
}
