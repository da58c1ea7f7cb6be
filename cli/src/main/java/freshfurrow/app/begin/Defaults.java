package freshfurrow.app.begin;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * What is taken where nobody answered.
 *
 * @param first day of the season, as the file has it
 * @param last day of the season
 */
public record Defaults(UnitSystem units, String first, String last, ZoneId zone) {
    private static final int FIRST_MONTH = 4;
    private static final int FIRST_DAY = 19;

    /** From 19 April to 5 June. */
    private static final int DAYS = 47;

    /** Those of a season with the first and last day that were answered, or of the next spring. */
    public static Defaults of(Answers answers, Surroundings here) {
        LocalDate spring = LocalDate.of(here.today().getYear(), FIRST_MONTH, FIRST_DAY);
        if (here.today().isAfter(spring.plusDays(DAYS))) {
            spring = spring.plusYears(1);
        }
        Optional<LocalDate> first = day(answers, "first");
        Optional<LocalDate> last = day(answers, "last");
        LocalDate from = first.orElse(last.map(day -> day.minusDays(DAYS)).orElse(spring));
        return new Defaults(
                answers.units(),
                from.toString(),
                last.orElse(from.plusDays(DAYS)).toString(),
                here.zone());
    }

    private static Optional<LocalDate> day(Answers answers, String key) {
        return Section.SEASON.questions().stream()
                .filter(question -> question.key().equals(key))
                .flatMap(question -> answers.of(Section.SEASON).get(0).answer(question).stream()
                        .flatMap(typed -> TypedAnswer.asWritten(question, typed, answers.units()).stream()))
                .map(LocalDate::parse)
                .findAny();
    }

    /** What is taken, with the reason; nothing where nothing can be taken. */
    public Filled of(Section section, Question question) {
        String usual = question.usual(units).value();
        if (!usual.isEmpty()) {
            String usually = question.usually(units);
            return new Filled(usual, "default" + (usually.isEmpty() ? "" : "; " + usually));
        }
        return switch (section.name() + "." + question.key()) {
            case "SEASON.name" -> new Filled("Season " + first.substring(0, 4), "default");
            case "SEASON.first" -> new Filled(first, "default");
            case "SEASON.last" -> new Filled(last, "default");
            case "SEASON.timezone" -> new Filled(zone.getId(), "default: the zone of this computer");
            case "CROPS.window" -> new Filled(first + "/" + last, "default: the whole season");
            case "COMPOST.from" -> new Filled(first, "default: from the first day on");
            default -> new Filled("", "");
        };
    }
}
