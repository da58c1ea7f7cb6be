package freshfurrow.model.audit;

/**
 * One place where a plan breaks a rule.
 *
 * @param where the machine, field, load, batch or total it is about
 * @param what one sentence, figures in SI units as in the plan file
 */
public record Finding(Rule rule, String where, String what) {
    /** One line: the rule, where and what. */
    @Override
    public String toString() {
        return rule + ": " + where + ": " + what;
    }
}
