package freshfurrow.cli.words;

import freshfurrow.app.learn.Learned;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.Table;
import freshfurrow.model.learn.Estimate;
import freshfurrow.model.learn.FigureText;
import freshfurrow.model.learn.Learning;
import freshfurrow.model.learn.LeftOut;
import freshfurrow.model.learn.Lesson;
import freshfurrow.model.learn.Taught;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a season's log teaches, as text. */
public final class LessonsText {
    private static final int WIDTH = 130;
    private static final String UNKNOWN = "-";

    private final Learned learned;
    private final FigureText text;

    public LessonsText(Learned learned) {
        this.learned = learned;
        text = new FigureText(learned.season().units());
    }

    /** A table of all figures, what was left out, and how it is to be read. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("What the log of " + learned.season().name() + " teaches ("
                + Figures.count(learned.entries(), "entry", "entries") + ")");
        lines.add("");
        lines.addAll(table());
        lines.add("");
        leftOut(lines);
        if (!learned.lessons().dryingLearned()) {
            lines.add("Drying: not looked at, because a weather record says when ground is fit.");
        }
        lines.addAll(conclusion());
        return lines;
    }

    private List<String> table() {
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left("Figure"),
                        Table.Column.right("Season file"),
                        Table.Column.right("By the log"),
                        Table.Column.right("95 % interval"),
                        Table.Column.right("Median"),
                        Table.Column.right("Varies"),
                        Table.Column.left("Seen")),
                "Verdict");
        learned.lessons().lessons().forEach(lesson -> table.row(cells(lesson), List.of(verdict(lesson))));
        return table.lines();
    }

    private List<String> cells(Lesson lesson) {
        List<String> cells = new ArrayList<>();
        cells.add(name(lesson));
        cells.add(text.of(lesson.figure(), lesson.fileFigure()));
        cells.addAll(lesson.estimate()
                .map(estimate -> List.of(
                        text.of(lesson.figure(), estimate.mean()),
                        text.interval(lesson.figure(), estimate.low(), estimate.high()),
                        text.of(lesson.figure(), estimate.median()),
                        varies(estimate)))
                .orElse(List.of(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN)));
        cells.add(seen(lesson));
        return cells;
    }

    private static String varies(Estimate estimate) {
        return estimate.spread().isPresent() ? Math.round(estimate.spread().getAsDouble() * 100) + " %" : UNKNOWN;
    }

    /** What the figure is called, as {@code R1 batch time}. */
    public static String name(Lesson lesson) {
        return switch (lesson.figure()) {
            case BATCH_TIME -> lesson.of() + " batch time";
            case TRANSFER_RATE -> lesson.of() + " transfer rate";
            case FIELD_CAPACITY -> lesson.of() + " field capacity";
            case ROAD_SPEED -> lesson.of() + " road speed";
            case DRYING -> "drying, " + lesson.of();
            case SPREAD -> "spread, " + lesson.of();
        };
    }

    private static String seen(Lesson lesson) {
        return lesson.figure() == Taught.DRYING
                ? Figures.count(lesson.observations(), "field", "fields") + ", "
                        + Figures.count(lesson.groups(), "rain", "rains")
                : lesson.observations() + " on " + Figures.count(lesson.groups(), "day", "days");
    }

    private String verdict(Lesson lesson) {
        if (lesson.differs()) {
            return learned.value(lesson).isPresent()
                    ? "differs"
                    : "differs: more than width and speed allow, so correct those";
        }
        if (isTooFew(lesson)) {
            return "too few";
        }
        return lesson.estimate().isPresent() ? "may be right" : "too seldom seen fit";
    }

    private void leftOut(List<String> lines) {
        Map<LeftOut, Integer> counts = learned.lessons().leftOut();
        if (!counts.isEmpty()) {
            lines.add("Left out:");
            counts.forEach(
                    (why, count) -> lines.add("  " + Figures.count(count, "entry", "entries") + ": " + why(why)));
            lines.add("");
        }
    }

    private static String why(LeftOut why) {
        return switch (why) {
            case VOID -> "void";
            case NO_TIME -> "nobody said how long it took";
            case NO_MACHINE -> "nobody said which machine it was";
            case SMALL_BATCH -> "so small a batch that the rig's least batch time counts";
            case NO_ROAD -> "no road is known between the two places, or none is needed";
            case OVERLAP -> "at the same time as other work of the machine";
            case TWO_TRANSFERS -> "more than one transfer of the same load";
            case OUT_OF_ORDER -> "a load used before it was there, by the times of the two entries";
            case NO_RAIN -> "said of ground before any rain";
            case UNFIT_AFTER_FIT -> "said of ground that was fit first and unfit then, without rain in between";
        };
    }

    private List<String> conclusion() {
        List<String> lines = new ArrayList<>();
        lines.add(
                learned.lessons().differing().isEmpty()
                        ? "No figure of the season file differs by more than chance."
                        : "Differs: what the season file says lies outside the interval. Of twenty figures that are right, one does so by chance.");
        if (learned.lessons().lessons().stream().anyMatch(LessonsText::isTooFew)) {
            lines.add("Too few: fewer than " + Learning.LEAST_GROUPS + " days of a machine, or rains.");
        }
        return lines;
    }

    private static boolean isTooFew(Lesson lesson) {
        return lesson.groups() < Learning.LEAST_GROUPS;
    }
}
