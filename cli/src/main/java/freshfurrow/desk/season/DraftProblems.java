package freshfurrow.desk.season;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.editing.Draft;
import freshfurrow.model.read.Problem;
import java.util.Map;

/** What {@code check} would say is wrong with a season, each problem with the value that it is about. */
final class DraftProblems {
    private DraftProblems() {}

    static void write(ObjectNode state, Draft draft) {
        ArrayNode problems = state.putArray("problems");
        draft.problems().forEach(problem -> problems.addObject()
                .put("path", path(problem, draft))
                .put("reason", problem.reason())
                .put("remedy", problem.remedy())
                .put("text", problem.toString()));
    }

    /** A problem of a table names a line and a column; here they are the field's. */
    private static String path(Problem problem, Draft draft) {
        boolean isOfSeasonFile = draft.digests().keySet().stream()
                .findFirst()
                .filter(problem.file()::equals)
                .isPresent();
        if (isOfSeasonFile || problem.line().isEmpty()) {
            return problem.path();
        }
        return draft.fieldLines().entrySet().stream()
                .filter(line -> line.getValue() == problem.line().getAsInt())
                .map(Map.Entry::getKey)
                .findFirst()
                .map(id -> "fields." + id + "." + problem.path())
                .orElse(problem.path());
    }
}
