/**
 * What a season asks for against what there is, before anything is planned: simple ratios of areas, rates and capacities.
 * No timing rule belongs here; when things happen is the timeline's to say.
 */
@NullMarked
package freshfurrow.cli.needs;

import org.jspecify.annotations.NullMarked;
