package freshfurrow.model.season;

import java.time.LocalDateTime;

/**
 * What somebody who looked at a field said of its ground. It holds over all rain that had begun by then, and over the weather of a record up to
 * that day; rain that begins later counts again.
 *
 * @param said when it was said
 * @param fitFrom from when on the ground bears machines, not before {@code said}; the same where it did when it was said
 */
public record Judgement(LocalDateTime said, LocalDateTime fitFrom) {
    public Judgement {
        if (fitFrom.isBefore(said)) {
            throw new IllegalArgumentException("fit from " + fitFrom + ", before " + said + ", when that was said");
        }
    }

    /** The ground bore machines. */
    public static Judgement fit(LocalDateTime said) {
        return new Judgement(said, said);
    }

    /** Whether the ground bore machines when it was said. */
    public boolean isFit() {
        return fitFrom.equals(said);
    }
}
