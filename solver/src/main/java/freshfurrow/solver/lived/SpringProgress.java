package freshfurrow.solver.lived;

/** Told how many springs are lived. */
@FunctionalInterface
public interface SpringProgress {
    /** Hears nothing. */
    SpringProgress SILENT = (lived, all) -> {};

    /** Called on any thread after each spring of each variant; returns quickly. */
    void lived(int lived, int all);
}
