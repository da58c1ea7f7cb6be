package freshfurrow.app.refusal;

/** Of what a season has several, each with an id. */
public enum SeasonPart {
    PLANTER,
    RIG,
    RECIPE,
    FIELD,
    LOT
}
