package freshfurrow.desk.begin;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.begin.Answers;
import freshfurrow.app.begin.Defaults;
import freshfurrow.app.begin.Filled;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.Question;
import freshfurrow.app.begin.Section;
import freshfurrow.app.begin.Surroundings;
import freshfurrow.app.begin.UnitSystem;
import java.util.Locale;
import java.util.Map;

/** Questions with what is usual, as pages show them. */
final class QuestionData {
    private QuestionData() {}

    static ArrayNode of(UnitSystem units, Surroundings here) {
        Defaults defaults = Defaults.of(new Answers(units, Map.of(), GivenFields.NONE, false), here);
        ArrayNode sections = JsonNodeFactory.instance.arrayNode();
        for (Section section : Section.values()) {
            ObjectNode one = sections.addObject()
                    .put("key", section.key())
                    .put("noun", section.noun())
                    .put("about", section.about())
                    .put("usualId", section.usualId());
            ArrayNode questions = one.putArray("questions");
            section.questions().forEach(question -> add(questions, section, question, defaults, units));
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
                .put("usual", usual.text())
                .put("note", usual.note().isEmpty() ? question.usually(units) : usual.note());
    }
}
