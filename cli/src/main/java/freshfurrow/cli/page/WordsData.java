package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Work;

/** What the page calls the work on fields: of all machines of the plan, and of those of one kind. */
final class WordsData {
    private WordsData() {}

    static void write(ObjectNode data, Plan plan) {
        ObjectNode words = data.putObject("words");
        words(words.putObject("all"), WorkWords.of(plan));
        for (Work work : Work.values()) {
            words(words.putObject(work.key()), WorkWords.of(work));
        }
    }

    private static void words(ObjectNode node, WorkWords words) {
        node.put("verb", words.verb())
                .put("does", words.does())
                .put("noun", words.noun())
                .put("done", words.done())
                .put("undone", words.undone())
                .put("machine", words.machine())
                .put("machines", words.machines());
    }
}
