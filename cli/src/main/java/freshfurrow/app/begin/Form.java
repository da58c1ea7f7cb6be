package freshfurrow.app.begin;

/** What kind of answer a question has. */
public enum Form {
    /** What people call something. */
    NAME,
    /** A day. */
    DATE,
    /** A first and a last day. */
    WINDOW,
    /** A name of the tz database. */
    ZONE,
    /** Spans of a day. */
    HOURS,
    /** Weekdays and dates, or none. */
    CLOSED,
    /** Latitude and longitude. */
    POSITION,
    /** A figure with a unit. */
    QUANTITY,
    /** A figure without a unit, or a percentage. */
    SHARE,
    /** At the field or at the water point. */
    CHOICE
}
