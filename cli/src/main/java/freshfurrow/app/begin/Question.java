package freshfurrow.app.begin;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.WrittenQuantity;
import java.util.Optional;

/**
 * A plain question, whose answer is one value of the season file.
 *
 * @param key of the value
 * @param words the question as it is asked
 * @param kind of a quantity; empty for all else
 * @param us what is usual in acres and gallons
 * @param metric what is usual in hectares and litres
 * @param source where the usual range comes from; empty where there is no range
 */
public record Question(
        String key, String words, Form form, Optional<Kind> kind, Usual us, Usual metric, String source) {
    /** Of ranges that are rules of thumb. */
    static final String COMMON = "common practice, no source";

    /**
     * What is usual.
     *
     * @param value as a season file has it, taken where nothing is answered; empty where nothing is taken
     * @param range in words; empty where there is none
     */
    public record Usual(String value, String range) {}

    static Question of(String key, String words, Form form, String value) {
        Usual usual = new Usual(value, "");
        return new Question(key, words, form, Optional.empty(), usual, usual, "");
    }

    static Question quantity(String key, String words, Kind kind, Usual us, Usual metric) {
        return new Question(key, words, Form.QUANTITY, Optional.of(kind), us, metric, COMMON);
    }

    Question from(String itsSource) {
        return new Question(key, words, form, kind, us, metric, itsSource);
    }

    public Usual usual(UnitSystem units) {
        return units == UnitSystem.US ? us : metric;
    }

    /** The unit that is meant where none is typed; empty where there is none. */
    public String unit(UnitSystem units) {
        Usual usual = usual(units);
        String example = usual.value().isEmpty() ? usual.range().replaceFirst(".* ([0-9])", "$1") : usual.value();
        return WrittenQuantity.parse(example).map(WrittenQuantity::unit).orElse("");
    }

    /** The range, with its source where that is more than common practice; empty where there is none, or only an example. */
    public String range(UnitSystem units) {
        Usual usual = usual(units);
        if (usual.value().isEmpty() || usual.range().isEmpty()) {
            return "";
        }
        return usual.range() + (source.equals(COMMON) ? "" : "; " + source);
    }

    /** The range with its source, or only an example, as it stands beside a figure; empty where there is none. */
    public String usually(UnitSystem units) {
        String range = usual(units).range();
        if (usual(units).value().isEmpty()) {
            return range;
        }
        return range.isEmpty() ? "" : "usual " + range + (source.isEmpty() ? "" : " (" + source + ")");
    }
}
