package freshfurrow.solver.construction;

/** A rule by which a planter that is done with a field chooses the next. */
@FunctionalInterface
interface NextField {
    /**
     * How much a field presses to be next; the field that presses most is taken.
     *
     * @param from the field where the planter stands, or {@code SeasonEstimate.START}
     * @param clockS the planter's clock
     */
    double pressure(int planter, int from, int field, double clockS);
}
