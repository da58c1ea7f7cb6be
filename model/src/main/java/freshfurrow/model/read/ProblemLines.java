package freshfurrow.model.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Problems as lines for people: a mistake that is made in many places, as by a wrong column of a table, is told once. */
public final class ProblemLines {
    private static final int TOLD_ONE_BY_ONE = 3;
    private static final String FIGURE_OR_QUOTED = "'[^']*'|[+-]?[0-9][0-9.,]*";

    private ProblemLines() {}

    /** What makes problems alike: all but where they stand and the figure or text that is wrong there. */
    private record Kind(String file, String key, String reason, String remedy) {
        static Kind of(Problem problem) {
            String key = problem.path().substring(problem.path().lastIndexOf('.') + 1);
            return new Kind(problem.file(), key, problem.reason().replaceAll(FIGURE_OR_QUOTED, "'"), problem.remedy());
        }
    }

    /** A line a problem; more than three alike are one line, with the first three places and their number. */
    public static List<String> of(List<Problem> problems) {
        Map<Kind, List<Problem>> alike =
                problems.stream().collect(Collectors.groupingBy(Kind::of, LinkedHashMap::new, Collectors.toList()));
        List<String> lines = new ArrayList<>();
        for (Problem problem : problems) {
            List<Problem> all = alike.getOrDefault(Kind.of(problem), List.of());
            if (all.size() <= TOLD_ONE_BY_ONE) {
                lines.add(problem.toString());
            } else if (all.get(0).equals(problem)) {
                lines.add(problem + " (" + all.size() + " alike: " + places(all) + " and "
                        + (all.size() - TOLD_ONE_BY_ONE) + " more)");
            }
        }
        return lines;
    }

    private static String places(List<Problem> alike) {
        boolean byLine = alike.stream().allMatch(problem -> problem.line().isPresent())
                && alike.stream().map(Problem::line).distinct().count() == alike.size();
        List<Problem> first = alike.subList(0, TOLD_ONE_BY_ONE);
        return byLine
                ? "lines "
                        + joined(first.stream()
                                .map(problem -> Integer.toString(problem.line().orElseThrow()))
                                .toList())
                : joined(first.stream().map(Problem::shownPath).toList());
    }

    private static String joined(List<String> places) {
        return String.join(", ", places);
    }
}
