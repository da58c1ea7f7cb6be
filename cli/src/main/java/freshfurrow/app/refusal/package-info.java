/**
 * What the application layer cannot do for whoever asks, as facts. Which words say it, and which option or button would help, is for the
 * door that was asked.
 */
@NullMarked
package freshfurrow.app.refusal;

import org.jspecify.annotations.NullMarked;
