package freshfurrow.model.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/** Seasons of no sense in odd layouts, with comments wherever they may be, as people and other programs write them. */
final class RandomTexts {
    private static final List<String> WORDS =
            List.of("corn", "P1", "40 ac", "2027-05-03", "NO", "0123", "14:00", "größe", "a b", "𝛼", "1.0", "x-y_z");

    private final Random random;
    private final String lineBreak;
    private int keys;

    RandomTexts(long seed) {
        random = new Random(seed);
        lineBreak = random.nextInt(3) == 0 ? "\r\n" : "\n";
    }

    /** A YAML map in a block, with others, lists and scalars within. */
    String yaml() {
        String text = comments(0) + block(0, 0) + comments(0);
        return random.nextBoolean() ? text : text.stripTrailing();
    }

    private String block(int column, int depth) {
        StringBuilder lines = new StringBuilder();
        int count = 1 + random.nextInt(4);
        int step = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            lines.append(" ".repeat(column)).append(key()).append(":");
            int kind = random.nextInt(depth > 2 ? 2 : 5);
            if (kind == 0) {
                lines.append(random.nextInt(4) == 0 ? "" : " " + scalar(false)).append(end());
            } else if (kind == 1) {
                lines.append(" ").append(flow(column + 2, depth)).append(end());
            } else if (kind == 2) {
                lines.append(end()).append(comments(column)).append(list(column + random.nextInt(2) * step, depth));
            } else {
                lines.append(end()).append(comments(column + step)).append(block(column + step, depth + 1));
            }
            lines.append(comments(column));
        }
        return lines.toString();
    }

    private String list(int column, int depth) {
        StringBuilder lines = new StringBuilder();
        int count = 1 + random.nextInt(3);
        String dash = "-" + " ".repeat(1 + random.nextInt(3));
        for (int i = 0; i < count; i++) {
            lines.append(" ".repeat(column)).append(dash);
            int kind = random.nextInt(3);
            if (kind == 0) {
                lines.append(scalar(false)).append(end());
            } else if (kind == 1) {
                lines.append(flow(column + 4, depth)).append(end());
            } else {
                lines.append(block(column + dash.length(), 3).substring(column + dash.length()));
            }
        }
        return lines.toString();
    }

    private String flow(int column, int depth) {
        boolean map = random.nextBoolean();
        int count = random.nextInt(4);
        boolean broken = random.nextInt(3) == 0 && count > 0;
        boolean first = random.nextBoolean();
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String value = depth < 2 && random.nextInt(4) == 0 ? flow(column + 3, depth + 2) : scalar(true);
            parts.add(map ? key() + ": " + value : value);
        }
        StringBuilder text = new StringBuilder(map ? "{" : "[");
        for (int i = 0; i < parts.size(); i++) {
            if (broken && (i > 0 || first)) {
                text.append(random.nextInt(3) == 0 ? " # of " + i : "")
                        .append(lineBreak)
                        .append(" ".repeat(column + 3));
            } else if (i > 0) {
                text.append(" ");
            }
            text.append(parts.get(i)).append(i < parts.size() - 1 || random.nextInt(6) == 0 ? "," : "");
        }
        if (broken && random.nextBoolean()) {
            text.append(random.nextBoolean() ? " # last" : "").append(lineBreak).append(" ".repeat(column + 1));
        }
        return text.append(map ? "}" : "]").toString();
    }

    private String key() {
        keys++;
        return switch (random.nextInt(6)) {
            case 0 -> "\"k" + keys + "\"";
            case 1 -> "'k" + keys + "'";
            default -> "k" + keys;
        };
    }

    private String scalar(boolean flow) {
        String word = WORDS.get(random.nextInt(WORDS.size()));
        return switch (random.nextInt(5)) {
            case 0 -> "\"" + word + ", and\"";
            case 1 -> "'" + word + "''s'";
            default -> flow ? word : word + " # " + word;
        };
    }

    private String end() {
        return (random.nextInt(3) == 0 ? "  # c" + random.nextInt(100) : "") + lineBreak;
    }

    private String comments(int column) {
        return switch (random.nextInt(6)) {
            case 0 -> " ".repeat(column) + "# of what follows" + lineBreak;
            case 1 -> lineBreak;
            default -> "";
        };
    }

    /** Rows of fields with quotes, blank lines and missing cells. */
    String csv() {
        List<String> columns = new ArrayList<>(List.of("id", "name", "area (ac)", "crop", "drainage"));
        StringBuilder text = new StringBuilder(String.join(",", columns));
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            text.append(lineBreak).append(random.nextInt(6) == 0 ? lineBreak : "");
            int cells = 3 + random.nextInt(4);
            text.append("F").append(i).append(",").append(cell());
            text.append(",").append(10 + random.nextInt(90)).append(random.nextInt(3) == 0 ? " ha" : "");
            for (int j = 3; j < cells; j++) {
                text.append(",").append(j < columns.size() ? cell() : "");
            }
        }
        return text.append(random.nextBoolean() ? lineBreak : "").toString();
    }

    private String cell() {
        return switch (random.nextInt(5)) {
            case 0 -> "";
            case 1 -> "\"one, \"\"two\"\"\"";
            case 2 -> "\"on" + lineBreak + "two lines\"";
            case 3 -> "\"" + word() + "\"";
            default -> word();
        };
    }

    /** Features with blanks as different programs put them. */
    String geoJson() {
        String blank = List.of("", " ", lineBreak + "\t").get(random.nextInt(3));
        String features = java.util.stream.IntStream.range(0, 1 + random.nextInt(4))
                .mapToObj(i -> "{\"type\":\"Feature\"," + blank + "\"properties\":" + blank + properties(i, blank)
                        + ", \"geometry\": {\"type\": \"Polygon\", \"coordinates\": [[[2.30,48.5], [2.4, 48.5],[2.4,48.6],[2.30,48.5]]]}"
                        + blank + "}")
                .collect(Collectors.joining("," + blank));
        return "{\"type\": \"FeatureCollection\"," + blank + "\"features\":[" + blank + features + blank + "]}"
                + (random.nextBoolean() ? lineBreak : "");
    }

    private String properties(int number, String blank) {
        StringBuilder text = new StringBuilder("{\"id\":\"F" + number + "\"");
        for (String key : List.of("name", "crop", "lateWeight")) {
            if (random.nextBoolean()) {
                text.append(",").append(blank).append('"').append(key).append("\": ");
                text.append(key.equals("lateWeight") ? "1.50" : "\"" + word() + "\\n\"");
            }
        }
        return text.append("}").toString();
    }

    String word() {
        return WORDS.get(random.nextInt(WORDS.size()));
    }

    Random random() {
        return random;
    }
}
