package freshfurrow.desk.server;

/** Who asks: each may do what those before may. */
public enum Role {
    /** Looks at the day's work, and logs what was done. */
    CREW,
    /** Changes the season, plans, and ends the desk. */
    OWNER;

    boolean may(Role least) {
        return compareTo(least) >= 0;
    }
}
