package freshfurrow.model.weather;

import freshfurrow.model.season.GroundRecord;

/**
 * The weather of one spring laid over a season's dates.
 *
 * @param index its number, from 0
 * @param generated whether a generator made it; otherwise it is a year of the record
 * @param ground what it does to the ground
 */
public record Spring(int index, boolean generated, GroundRecord ground) {
    /** Where the weather is from, as people know it. */
    public String origin() {
        return ground.origin();
    }
}
