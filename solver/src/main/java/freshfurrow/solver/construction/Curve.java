package freshfurrow.solver.construction;

/** A way over the land that passes by every field, so that fields one after the other on it lie near one another. */
@FunctionalInterface
interface Curve {
    /** How far along the curve each field lies; tells the order only, no distances. */
    double[] along(FieldMap map);
}
