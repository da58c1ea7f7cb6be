package freshfurrow.app.refusal;

/** What cannot be done for whoever asks, and why. */
public sealed interface Refusal
        permits EditRefusal, InputRefusal, LogRefusal, OutputRefusal, PlanningRefusal, PlanRefusal, SpringsRefusal {
    <T> T accept(Visitor<T> visitor);

    /**
     * What a door makes of each kind of refusal. A new refusal has a method of its own in one of these visitors, so that the compiler names
     * every door that has to know of it.
     *
     * @param <T> what is made of it
     */
    interface Visitor<T> {
        T visit(EditRefusal refusal);

        T visit(InputRefusal refusal);

        T visit(LogRefusal refusal);

        T visit(OutputRefusal refusal);

        T visit(PlanningRefusal refusal);

        T visit(PlanRefusal refusal);

        T visit(SpringsRefusal refusal);
    }
}
