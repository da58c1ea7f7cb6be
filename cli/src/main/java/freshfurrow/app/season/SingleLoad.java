package freshfurrow.app.season;

import freshfurrow.model.timeline.OneLoad;

/**
 * A load by itself, and what it is too much for.
 *
 * @param overTank whether it is more than the planter's tank holds
 * @param overNurseTank whether it is more than the rig's nurse tank carries
 * @param pastHoldS how long after the end of its hold time the last of it would be in the ground, s; 0 when it is in time
 */
public record SingleLoad(OneLoad load, boolean overTank, boolean overNurseTank, int pastHoldS) {
    public boolean hasRoom() {
        return !overTank && !overNurseTank && pastHoldS == 0;
    }
}
