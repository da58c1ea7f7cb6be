package freshfurrow.model.season;

/** Something that drives from place to place and works in its hours. What is out of order is told by {@link Outage}. */
public sealed interface Machine permits Applicator, Rig {
    String id();

    /** Id of the place where it stands when the season begins. */
    String at();

    WorkHours hours();

    /** What is kept of each day of its hours for what the day begins and ends with. */
    KeptTime kept();

    /** m/s, above 0. */
    double roadSpeedMPerS();
}
