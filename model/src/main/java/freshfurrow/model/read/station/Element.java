package freshfurrow.model.read.station;

import freshfurrow.model.quantity.Kind;

/** What a station measures, and what is possible on earth by the records that the World Meteorological Organization keeps. */
enum Element {
    /** -89.2 to 56.7 °C. */
    TMAX("tmax", Kind.TEMPERATURE, -90, 57, "temperatures of -130 to 134 F (-90 to 57 C)"),
    /** The same. */
    TMIN("tmin", Kind.TEMPERATURE, -90, 57, "temperatures of -130 to 134 F (-90 to 57 C)"),
    /** 1,825 mm in 24 hours. */
    RAIN("rain", Kind.RAIN, 0, 1_825, "0 to 71 in (1,825 mm) a day");

    private final String column;
    private final Kind kind;
    private final double least;
    private final double most;
    private final String words;

    Element(String column, Kind kind, double least, double most, String words) {
        this.column = column;
        this.kind = kind;
        this.least = least;
        this.most = most;
        this.words = words;
    }

    String column() {
        return column;
    }

    Kind kind() {
        return kind;
    }

    boolean possible(double figure) {
        return figure >= least && figure <= most;
    }

    String words() {
        return words;
    }
}
