/**
 * Units at the edges: parsing quantities as people write them and showing SI numbers in their units. Everything inside
 * the product is SI; nothing but parsing and showing belongs here.
 */
@NullMarked
package freshfurrow.model.quantity;

import org.jspecify.annotations.NullMarked;
