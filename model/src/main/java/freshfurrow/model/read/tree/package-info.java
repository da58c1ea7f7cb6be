/**
 * Files as trees in which every part knows where it stands: YAML, JSON and CSV read without deciding what any of it means. What a
 * key may hold does not belong here.
 */
@NullMarked
package freshfurrow.model.read.tree;

import org.jspecify.annotations.NullMarked;
