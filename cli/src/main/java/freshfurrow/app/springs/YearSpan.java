package freshfurrow.app.springs;

/** Years from first to last, both included. */
public record YearSpan(int first, int last) {
    public static final YearSpan ALL = new YearSpan(0, 9999);

    public boolean contains(int year) {
        return year >= first && year <= last;
    }
}
