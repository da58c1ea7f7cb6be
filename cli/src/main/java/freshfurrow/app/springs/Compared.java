package freshfurrow.app.springs;

import freshfurrow.model.compare.ComparedSprings;
import java.nio.file.Path;

/**
 * Variants that were compared.
 *
 * @param file that the comparison is written to, with its page beside it
 */
public record Compared(ComparedSprings springs, Path file) {}
