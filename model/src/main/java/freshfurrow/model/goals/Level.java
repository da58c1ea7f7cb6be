package freshfurrow.model.goals;

/** How much a goal matters: the least amount on one level outweighs any amount on the levels below it. */
public enum Level {
    /** Broken rules, as a count. */
    HARD,
    /** Area planted late or never, in hundredths of ha-days; where plans are judged by money, all that has a price, in millionths. */
    MEDIUM,
    /** Effort, in minutes. */
    SOFT
}
