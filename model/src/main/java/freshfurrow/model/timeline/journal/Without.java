package freshfurrow.model.timeline.journal;

import freshfurrow.model.timeline.state.WithoutReason;

/**
 * A part of a field that a planter plants without extract for one reason.
 *
 * @param dm2 area, dm2
 * @param startS s since the season's first midnight; likewise {@code endS}
 * @param untilS when the reason ends; past all seasons where it does not
 * @param rig that would bring a load then; -1 for none
 * @param waitS how long the planter would wait for that, s of its working time
 */
public record Without(
        int planter, int field, WithoutReason why, long dm2, int startS, int endS, int untilS, int rig, int waitS) {
    /** This part and what is planted next, of the same field. */
    Without with(int sameField, int nextS, int nextEndS, long moreDm2) {
        return new Without(
                planter, sameField, why, dm2 + moreDm2, dm2 > 0 ? startS : nextS, nextEndS, untilS, rig, waitS);
    }
}
