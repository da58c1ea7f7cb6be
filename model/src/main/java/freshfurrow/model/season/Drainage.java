package freshfurrow.model.season;

/** How soon a field bears machines again after rain. */
public enum Drainage {
    WELL,
    MODERATE,
    POOR
}
