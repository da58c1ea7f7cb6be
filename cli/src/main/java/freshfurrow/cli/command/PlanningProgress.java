package freshfurrow.cli.command;

import freshfurrow.app.planning.PlanningListener;
import freshfurrow.model.season.Season;
import freshfurrow.solver.Progress;
import java.util.Optional;

/** Shows on the terminal how far planning is, and says to an interruption from when on there is something to keep. */
final class PlanningProgress implements PlanningListener {
    private final Interruption interruption;
    private volatile Optional<ProgressLine> line = Optional.empty();

    PlanningProgress(Interruption interruption) {
        this.interruption = interruption;
    }

    @Override
    public void begins(Season season) {
        interruption.keep();
        line = Optional.of(new ProgressLine(season.units()));
    }

    @Override
    public void at(Progress progress) {
        line.ifPresent(shown -> shown.at(progress));
    }

    @Override
    public void searched() {
        line.ifPresent(ProgressLine::clear);
    }
}
