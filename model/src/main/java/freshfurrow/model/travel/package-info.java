/**
 * How far apart the places of a season are. Routes, speeds and times do not belong here.
 */
@NullMarked
package freshfurrow.model.travel;

import org.jspecify.annotations.NullMarked;
