package freshfurrow.app.learn;

import freshfurrow.model.learn.FigureText;
import freshfurrow.model.learn.Lesson;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Swath;
import java.util.List;
import java.util.Optional;

/** What a season file would say of the figures that differ by its log. */
final class LearnedValues {
    private final Season season;
    private final FigureText text;

    LearnedValues(Season season) {
        this.season = season;
        text = new FigureText(season.units());
    }

    /** Empty when it does not differ, or no value of the season file's key can say it. */
    Optional<LearnedValue> of(Lesson lesson) {
        return lesson.differs() ? of(lesson, lesson.estimate().orElseThrow().mean()) : Optional.empty();
    }

    private Optional<LearnedValue> of(Lesson lesson, double figure) {
        return switch (lesson.figure()) {
            case BATCH_TIME -> value(lesson, figure, "rigs", "batchTime");
            case TRANSFER_RATE -> value(lesson, figure, "rigs", "transferRate");
            case ROAD_SPEED -> value(lesson, figure, season.hasRig(lesson.of()) ? "rigs" : kind(lesson), "roadSpeed");
            case FIELD_CAPACITY -> capacity(lesson, figure);
            case DRYING ->
                Optional.of(new LearnedValue(List.of("drying", lesson.of()), text.of(lesson.figure(), figure)));
            case SPREAD ->
                Optional.of(new LearnedValue(List.of("spread", lesson.of()), text.of(lesson.figure(), figure)));
        };
    }

    private Optional<LearnedValue> value(Lesson lesson, double figure, String part, String key) {
        return Optional.of(new LearnedValue(List.of(part, lesson.of(), key), text.of(lesson.figure(), figure)));
    }

    private String kind(Lesson lesson) {
        return season.applicator(lesson.of()) instanceof Planter ? "planters" : "sprayers";
    }

    /** Of a machine that has a width and a speed, the share of what those would do without turns. */
    private Optional<LearnedValue> capacity(Lesson lesson, double m2PerS) {
        Applicator machine = season.applicator(lesson.of());
        if (machine instanceof Sprayer sprayer && sprayer.swath() instanceof Swath.Hose) {
            return value(lesson, m2PerS, "sprayers", "rate");
        }
        double efficiency = m2PerS / withoutTurnsM2PerS(machine);
        return efficiency > 1
                ? Optional.empty()
                : Optional.of(new LearnedValue(
                        List.of(kind(lesson), lesson.of(), "fieldEfficiency"), FigureText.number(efficiency)));
    }

    private static double withoutTurnsM2PerS(Applicator machine) {
        if (machine instanceof Planter planter) {
            return planter.widthM() * planter.speedMPerS();
        }
        Swath.Boom boom = (Swath.Boom) ((Sprayer) machine).swath();
        return boom.widthM() * boom.speedMPerS();
    }
}
