package freshfurrow.app.refusal;

/** Of what a season has several, each with an id. */
public enum SeasonPart {
    PLANTER,
    SPRAYER,
    RIG,
    RECIPE,
    FIELD,
    LOT
}
