package freshfurrow.solver;

/** Told several times a second how far planning is. */
@FunctionalInterface
public interface ProgressListener {
    /** Hears nothing. */
    ProgressListener SILENT = progress -> {};

    /** Called on a thread of the planner's own; returns quickly. */
    void at(Progress progress);
}
