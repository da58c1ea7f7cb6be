/**
 * What the desk needs to answer a browser: who may ask for what, the fixed parts of its pages, JSON, and events that pages are told.
 * It knows nothing of seasons.
 */
@NullMarked
package freshfurrow.desk.server;

import org.jspecify.annotations.NullMarked;
