package freshfurrow.cli.card;

import java.util.ArrayList;
import java.util.List;

/** Lines of a name, a figure and the arithmetic behind it, in columns. */
final class Sums {
    private record Line(String name, String figure, String arithmetic) {}

    private final List<Line> lines = new ArrayList<>();

    /** @param arithmetic what the figure is made of, without the equals sign */
    Sums add(String name, String figure, String arithmetic) {
        lines.add(new Line(name, figure, "= " + arithmetic));
        return this;
    }

    /** A figure that is given and not worked out. */
    Sums given(String name, String figure, String remark) {
        lines.add(new Line(name, figure, remark));
        return this;
    }

    List<String> lines() {
        int name = lines.stream().mapToInt(line -> line.name.length()).max().orElse(0);
        int figure = lines.stream().mapToInt(line -> line.figure.length()).max().orElse(0);
        return lines.stream()
                .map(line -> "  " + pad(line.name, name) + "  " + pad(line.figure, figure) + "  " + line.arithmetic)
                .map(String::stripTrailing)
                .toList();
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}
