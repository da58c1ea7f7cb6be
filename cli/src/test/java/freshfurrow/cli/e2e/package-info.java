/** The program run as its users run it: as a process, through its launcher. Needs the jar, so it runs in the verify phase. */
@NullMarked
package freshfurrow.cli.e2e;

import org.jspecify.annotations.NullMarked;
