package freshfurrow.app.refusal;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Gets hold of refusals. */
public final class Refusals {
    private Refusals() {}

    /** Why the work is refused, which it has to be. */
    public static Refusal of(ThrowingCallable work) {
        return assertThatExceptionOfType(Refused.class)
                .isThrownBy(work)
                .actual()
                .refusal();
    }
}
