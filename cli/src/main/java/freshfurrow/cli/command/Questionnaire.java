package freshfurrow.cli.command;

import freshfurrow.app.begin.Answers;
import freshfurrow.app.begin.Defaults;
import freshfurrow.app.begin.Entry;
import freshfurrow.app.begin.Filled;
import freshfurrow.app.begin.Form;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.NewSeason;
import freshfurrow.app.begin.Question;
import freshfurrow.app.begin.Section;
import freshfurrow.app.begin.Surroundings;
import freshfurrow.app.begin.TypedPosition;
import freshfurrow.app.begin.UnitSystem;
import freshfurrow.model.read.Problem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** All questions about a season, one after the other; what the reader of the file would refuse is asked again. */
final class Questionnaire {
    private static final List<Section> COUNTED = List.of(Section.PLANTERS, Section.RIGS, Section.WATER);
    private static final Pattern COUNT = Pattern.compile("[1-9]|1[0-9]|20");

    private final Prompts prompts;
    private final Surroundings here;
    private final Map<Section, List<Entry>> entries = new EnumMap<>(Section.class);
    private UnitSystem units = UnitSystem.US;
    private GivenFields fields = GivenFields.NONE;

    Questionnaire(Prompts prompts, Surroundings here) {
        this.prompts = prompts;
        this.here = here;
    }

    /** The answers; empty when input ends before the last. */
    Optional<Answers> answers() {
        try {
            prompts.say("Enter takes what stands in brackets; that is a default, and the file will say so.");
            prompts.say("A usual range is common practice, with no source, unless one is named; it is no limit.");
            units = units();
            section(Section.SEASON, 1);
            section(Section.PLACES, 1);
            fields = new FieldQuestions(prompts, this::withFields, here).fields();
            crops();
            for (Section section :
                    List.of(Section.RECIPES, Section.PLANTERS, Section.RIGS, Section.WATER, Section.COMPOST)) {
                section(section, COUNTED.contains(section) ? count(section) : 1);
            }
            return Optional.of(now());
        } catch (Prompts.EndOfInput e) {
            return Optional.empty();
        }
    }

    private Answers now() {
        return new Answers(units, entries, fields, false);
    }

    private Answers withFields(GivenFields others) {
        return new Answers(units, entries, others, false);
    }

    private UnitSystem units() {
        while (true) {
            Optional<UnitSystem> answer = UnitSystem.of(prompts.answerOr(
                    "Which units: us (acres, gallons, pounds) or metric (hectares, litres, kilograms)?", "us"));
            if (answer.isPresent()) {
                return answer.get();
            }
            prompts.say("  Write us or metric.");
        }
    }

    private int count(Section section) {
        prompts.say("");
        while (true) {
            String answer = prompts.answerOr("How many " + section.noun() + "s are there?", "1");
            if (COUNT.matcher(answer).matches()) {
                return Integer.parseInt(answer);
            }
            prompts.say("  Write a figure from 1 to 20.");
        }
    }

    private void section(Section section, int count) {
        prompts.say("");
        prompts.say(section.about());
        for (int i = 1; i <= count; i++) {
            if (count > 1) {
                prompts.say("The " + section.noun() + " " + i + " of " + count + ":");
            }
            entry(section, name(section));
        }
    }

    /** What people call the next thing of a section; empty for the usual name. */
    private String name(Section section) {
        if (section.naming().isEmpty()) {
            return "";
        }
        List<Entry> others = List.copyOf(entries.getOrDefault(section, List.of()));
        while (true) {
            put(section, others, new Entry("", Map.of()));
            String answer = prompts.answer(section.naming().get(), lastId(section));
            put(section, others, new Entry(answer, Map.of()));
            String id = lastId(section);
            List<Problem> problems = NewSeason.of(now(), here).problemsOfName(section, id);
            if (problems.isEmpty()) {
                if (!answer.isEmpty() && !answer.equals(id)) {
                    prompts.say("  Plans and sheets call it " + id + ".");
                }
                put(section, others);
                return answer;
            }
            problems.forEach(problem -> prompts.say("  " + problem.reason() + "; " + problem.remedy()));
        }
    }

    private String lastId(Section section) {
        List<String> ids = NewSeason.ids(now(), section);
        return ids.get(ids.size() - 1);
    }

    private void crops() {
        prompts.say("");
        prompts.say(Section.CROPS.about());
        for (String crop : NewSeason.cropIds(now()).keySet()) {
            prompts.say(crop + ":");
            entry(Section.CROPS, crop);
        }
    }

    private void entry(Section section, String id) {
        List<Entry> others = List.copyOf(entries.getOrDefault(section, List.of()));
        Map<String, String> typed = new LinkedHashMap<>();
        for (Question question : section.questions()) {
            answer(section, id, question, typed, others);
        }
        put(section, others, new Entry(id, typed));
    }

    private void answer(Section section, String id, Question question, Map<String, String> typed, List<Entry> others) {
        String usual = shown(Defaults.of(now(), here).of(section, question), question);
        while (true) {
            put(section, others, new Entry(id, typed));
            String answer = prompts.answer(words(question), usual);
            if (answer.isEmpty()) {
                return;
            }
            if (question.form() == Form.POSITION && TypedPosition.read(answer).isEmpty()) {
                prompts.say("  '" + answer + "' is not a place; write latitude and longitude, like 41.02, -97.01");
                continue;
            }
            Map<String, String> with = new LinkedHashMap<>(typed);
            with.put(question.key(), answer);
            put(section, others, new Entry(id, with));
            List<Problem> problems =
                    NewSeason.of(now(), here).problemsAt(section.path(idInFile(section, id), question));
            if (problems.isEmpty()) {
                typed.put(question.key(), answer);
                return;
            }
            problems.forEach(problem -> prompts.say("  " + problem.reason() + "; " + problem.remedy()));
        }
    }

    private String idInFile(Section section, String id) {
        return section == Section.CROPS ? NewSeason.cropIds(now()).getOrDefault(id, id) : lastId(section);
    }

    private String words(Question question) {
        String range = question.range(units);
        return question.words() + (range.isEmpty() ? "" : " (usual " + range + ")");
    }

    private static String shown(Filled usual, Question question) {
        return question.form() == Form.WINDOW ? usual.text().replace("/", " to ") : usual.text();
    }

    private void put(Section section, List<Entry> others, Entry... last) {
        List<Entry> all = new ArrayList<>(others);
        all.addAll(List.of(last));
        entries.put(section, all);
    }
}
