/**
 * Arithmetic of the drum and of the planter's outlets: dilution, lab counts, buckets, calibration. Pure figures in SI; how long
 * anything takes is the timeline's business, and units are shown elsewhere.
 */
@NullMarked
package freshfurrow.model.mixing;

import org.jspecify.annotations.NullMarked;
