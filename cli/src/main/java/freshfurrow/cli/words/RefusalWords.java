package freshfurrow.cli.words;

import freshfurrow.app.refusal.EditRefusal;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refusal;
import freshfurrow.app.refusal.SpringsRefusal;
import java.util.List;

/** What to tell of a refusal on a command line. */
public final class RefusalWords implements Refusal.Visitor<List<String>> {
    private RefusalWords() {}

    /** A line for each thing that is wrong, with what would help. */
    public static List<String> lines(Refusal refusal) {
        return refusal.accept(new RefusalWords());
    }

    @Override
    public List<String> visit(EditRefusal refusal) {
        return List.of(refusal.accept(new EditWords()));
    }

    @Override
    public List<String> visit(InputRefusal refusal) {
        return refusal.accept(new InputWords());
    }

    @Override
    public List<String> visit(LogRefusal refusal) {
        return List.of(refusal.accept(new LogWords()));
    }

    @Override
    public List<String> visit(OutputRefusal refusal) {
        return refusal.accept(new OutputWords());
    }

    @Override
    public List<String> visit(PlanningRefusal refusal) {
        return refusal.accept(new PlanningWords());
    }

    @Override
    public List<String> visit(PlanRefusal refusal) {
        return List.of(refusal.accept(new PlanWords()));
    }

    @Override
    public List<String> visit(SpringsRefusal refusal) {
        return List.of(refusal.accept(new SpringsWords()));
    }
}
