package freshfurrow.model.season;

/** Two places by their ids, the first where a way begins. */
public record FromTo(String from, String to) {}
