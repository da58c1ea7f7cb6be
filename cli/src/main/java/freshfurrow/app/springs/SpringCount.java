package freshfurrow.app.springs;

/**
 * How many springs, and where they come from.
 *
 * @param recorded years of the weather record
 * @param generated made like those of the record
 * @param record the name of its file, and what that says of itself
 */
public record SpringCount(int recorded, int generated, String record) {
    public int all() {
        return recorded + generated;
    }
}
