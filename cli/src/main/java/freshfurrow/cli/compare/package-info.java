/** What springs lived through say of variants, for people and for programs: the file, the text, the page. No figure is worked out here. */
@NullMarked
package freshfurrow.cli.compare;

import org.jspecify.annotations.NullMarked;
