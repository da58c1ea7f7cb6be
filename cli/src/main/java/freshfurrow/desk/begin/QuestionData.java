package freshfurrow.desk.begin;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.begin.Answers;
import freshfurrow.app.begin.Defaults;
import freshfurrow.app.begin.Filled;
import freshfurrow.app.begin.Form;
import freshfurrow.app.begin.Question;
import freshfurrow.app.begin.Section;
import freshfurrow.app.begin.Surroundings;
import freshfurrow.app.begin.UnitSystem;
import java.util.Locale;

/** Questions with what is usual, as pages show them. */
final class QuestionData {
    private QuestionData() {}

    /** @param answers of which other things that are usual follow, such as dates */
    static ArrayNode of(Answers answers, Surroundings here) {
        Defaults defaults = Defaults.of(answers, here);
        ArrayNode sections = JsonNodeFactory.instance.arrayNode();
        for (Section section : Section.values()) {
            ObjectNode one = sections.addObject()
                    .put("key", section.key())
                    .put("noun", section.noun())
                    .put("about", section.about())
                    .put("usualId", section.usualId(1))
                    .put("naming", section.naming().orElse(""));
            ArrayNode questions = one.putArray("questions");
            section.questions().forEach(question -> add(questions, section, question, defaults, answers.units()));
        }
        return sections;
    }

    private static void add(
            ArrayNode questions, Section section, Question question, Defaults defaults, UnitSystem units) {
        Filled usual = defaults.of(section, question);
        questions
                .addObject()
                .put("key", question.key())
                .put("path", section.path("?", question))
                .put("words", question.words())
                .put("form", question.form().name().toLowerCase(Locale.ROOT))
                .put("usual", question.form() == Form.WINDOW ? usual.text().replace("/", " to ") : usual.text())
                .put("note", usual.note().isEmpty() ? question.usually(units) : usual.note());
    }
}
