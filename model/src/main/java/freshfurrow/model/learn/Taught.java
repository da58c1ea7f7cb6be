package freshfurrow.model.learn;

/** The figures of a season file that a log can teach. */
public enum Taught {
    /** Of a rig: the time of a full batch, s. */
    BATCH_TIME(true),
    /** Of a rig: how fast it pumps into planters, L/s. */
    TRANSFER_RATE(false),
    /** Of a planter or sprayer: its effective field capacity, m2/s. */
    FIELD_CAPACITY(false),
    /** Of a machine: its speed on the road, m/s. */
    ROAD_SPEED(false),
    /** Of a drainage class: how long rain closes its fields, days per mm. */
    DRYING(true),
    /** Of the times of all machines at some work: their coefficient of variation, 0 or more. */
    SPREAD(true);

    private final boolean longer;

    Taught(boolean longer) {
        this.longer = longer;
    }

    /** The figure at which work takes so many times as long as at the season file's. */
    double at(double fileFigure, double timesAsLong) {
        return longer ? fileFigure * timesAsLong : fileFigure / timesAsLong;
    }
}
