package freshfurrow.app.trial;

import java.util.Optional;

/**
 * A field that is begun elsewhere or at another time.
 *
 * @param from where it was; empty when it was not begun
 * @param to where it is; empty when it is no longer begun
 */
public record Moved(String field, Optional<Begun> from, Optional<Begun> to) {}
