package freshfurrow.model.edit;

/** How a scalar is marked off in a text. */
enum Quotes {
    NONE,
    SINGLE,
    DOUBLE,
    /** Lines under {@code |} or {@code >}. */
    BLOCK
}
