package freshfurrow.cli.command;

import freshfurrow.app.input.PlanChoice;
import freshfurrow.cli.why.WhyReport;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Nearest;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.why.FieldExplanation;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "why",
        header = "Tell why a field is planted when it is, and what would change it.",
        description =
                "%nSays what keeps the field from being planted sooner and what stands before it, plays the plan out with the field at every other position, and, where it is late or not planted, finds how much more of what would have it in time.%n",
        footer = {
            "  freshfurrow why scenarios/first-season/plan W95",
            "  freshfurrow why plan.json N40 --season season.yaml"
        })
final class WhyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", index = "0", description = "a plan file, or a folder that holds plan.json")
    private Path plan = Path.of("");

    @Parameters(paramLabel = "FIELD", index = "1", description = "id of a field of its season")
    private String field = "";

    @Mixin
    private SeasonOfPlan seasonOfPlan = new SeasonOfPlan();

    @Override
    public Integer call() {
        Plan read = PlanChoice.read(plan);
        Path file = PlanChoice.file(plan);
        Season season = seasonOfPlan.read(file, read);
        Output.print(spec, WhyReport.lines(explanation(file, read, season, fieldOf(read, season))));
        return Freshfurrow.OK;
    }

    private static FieldExplanation explanation(Path file, Plan plan, Season season, Field field) {
        try {
            return FieldExplanation.of(CompiledSeason.of(season), plan, field);
        } catch (IllegalArgumentException e) {
            throw new Refusal(file + ": " + e.getMessage() + "; make a new plan with 'freshfurrow plan'");
        }
    }

    private Field fieldOf(Plan read, Season season) {
        List<String> ids = season.fields().stream().map(Field::id).toList();
        int index = ids.indexOf(field);
        if (index < 0 && plantedBefore(read)) {
            throw new Refusal(field + " was planted whole before this plan begins; 'freshfurrow trace' tells of it");
        }
        if (index < 0) {
            throw new Refusal("The season has no field " + field + "; "
                    + Nearest.to(field, ids)
                            .map(near -> "did you mean " + near + "?")
                            .orElseGet(() -> "it has " + few(ids)));
        }
        return season.fields().get(index);
    }

    private boolean plantedBefore(Plan read) {
        return read.start().stream().flatMap(start -> start.planted().stream()).anyMatch(part -> part.field()
                .equals(field));
    }

    private static String few(List<String> ids) {
        int named = 10;
        return String.join(", ", ids.subList(0, Math.min(named, ids.size())))
                + (ids.size() > named ? " and " + (ids.size() - named) + " more" : "");
    }
}
