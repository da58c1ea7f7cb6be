package freshfurrow.model.goals;

/** How much a goal matters: the least amount on one level outweighs any amount on the levels below it. */
public enum Level {
    /** Broken rules, as a count. */
    HARD,
    /** Area planted late or never, in hundredths of ha-days. */
    MEDIUM,
    /** Effort, in minutes. */
    SOFT
}
