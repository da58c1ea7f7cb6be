package freshfurrow.model.plan;

/**
 * Where a value of a JSON file stands: keys and positions from the top, such as {@code loads[3].litres}; empty at the top. Put together
 * only when it is read, as most places of a large file have nothing wrong with them.
 */
abstract sealed class JsonPath {
    static final JsonPath TOP = new Top();

    private static final int SHOWN = 60;

    /** The path, for people to read. */
    @Override
    public final String toString() {
        StringBuilder text = new StringBuilder();
        appendTo(text);
        return text.toString();
    }

    /** Where the value of a key of the object here stands. */
    JsonPath key(String key) {
        return new Key(this, key);
    }

    /**
     * Where an element of the list here stands.
     *
     * @param index from 0
     */
    JsonPath element(int index) {
        return new Element(this, index);
    }

    /** A text of a file, cut where it is too long for a line. */
    static String shown(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }

    abstract void appendTo(StringBuilder text);

    private static final class Top extends JsonPath {
        @Override
        void appendTo(StringBuilder text) {}
    }

    private static final class Key extends JsonPath {
        private final JsonPath object;
        private final String key;

        Key(JsonPath object, String key) {
            this.object = object;
            this.key = key;
        }

        @Override
        void appendTo(StringBuilder text) {
            object.appendTo(text);
            text.append(text.isEmpty() ? "" : ".").append(shown(key));
        }
    }

    private static final class Element extends JsonPath {
        private final JsonPath list;
        private final int index;

        Element(JsonPath list, int index) {
            this.list = list;
            this.index = index;
        }

        @Override
        void appendTo(StringBuilder text) {
            list.appendTo(text);
            text.append('[').append(index).append(']');
        }
    }
}
