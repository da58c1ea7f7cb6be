package freshfurrow.model.read;

import freshfurrow.model.log.Entry;

/** An entry of a log with the cells it was read from. */
record LoggedLine(Entry entry, LogCells cells) {}
