package freshfurrow.model.files;

/** What is to become of a file that is there already. */
public enum IfThere {
    /** It stays, and nothing is written. */
    KEEP,
    /** It is replaced, as somebody asked for that. */
    REPLACE;

    /**
     * What somebody said.
     *
     * @param asked whether files may be replaced
     */
    public static IfThere replaceIf(boolean asked) {
        return asked ? REPLACE : KEEP;
    }
}
