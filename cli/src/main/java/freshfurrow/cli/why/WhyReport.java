package freshfurrow.cli.why;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.cli.text.FieldReasons;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The answer to why a field is planted when it is: in short, then what keeps it, what stands before it, what else was tried. */
public final class WhyReport {
    private final FieldExplanation why;
    private final Field field;
    private final Figures figures;
    private final WorkWords words;
    private final List<String> lines = new ArrayList<>();

    private WhyReport(FieldExplanation why) {
        this.why = why;
        this.field = why.field();
        this.figures = new Figures(why.season().units());
        this.words = WorkWords.of(field.work());
    }

    /** The answer, a line an entry. */
    public static List<String> lines(FieldExplanation why) {
        WhyReport report = new WhyReport(why);
        report.write();
        return report.lines;
    }

    private void write() {
        FieldWork work = workOn(field, why, why.plan());
        inShort(work);
        section("Why not sooner", new WhyNotSooner(why, work).lines());
        why.positions()
                .own()
                .ifPresent(own -> section(
                        "Before it in " + planter(own) + "'s " + words.noun() + " order",
                        new ListBefore(why, own).lines()));
        section("Other positions", new OtherPositions(why, figures).lines());
        why.reliefs()
                .ifPresent(reliefs -> section(
                        "What would get it " + words.done() + " in time",
                        new ReliefText(why, figures).inTime(reliefs)));
        why.untreated()
                .map(untreated -> new UntreatedText(why, untreated, figures))
                .ifPresent(text -> {
                    section("Why without extract", text.reasons());
                    section("What would get it " + words.done() + " with extract", text.remedies());
                });
    }

    private void inShort(FieldWork work) {
        String name = field.name().equals(field.id()) ? field.id() : field.id() + " (" + field.name() + ")";
        lines.add(name + ": " + figures.area(field.areaHa()) + " of " + field.crop() + ", window "
                + Figures.day(field.window().first()) + " to "
                + Figures.day(field.window().last()));
        if (!field.fixed().equals(Fixed.NOT)) {
            lines.add(FieldReasons.fixed(why.season(), why.plan(), field));
        }
        work.start()
                .ifPresent(
                        start -> lines.add(WorkWords.capital(words.done()) + " by " + String.join(", ", work.planters())
                                + " " + figures.fromTo(start, work.end().orElse(start)) + ": " + spare(work)));
        why.untreated().ifPresent(untreated -> lines.add(new UntreatedText(why, untreated, figures).howMuch()));
        why.positions()
                .own()
                .ifPresentOrElse(
                        own -> lines.add("Position " + (own.index() + 1) + " of "
                                + own.lists().of(own.planter()).size() + " in " + planter(own) + "'s " + words.noun()
                                + " order"),
                        () -> lines.add("Not in any " + words.noun() + " order"));
        work.unserved()
                .ifPresent(left -> lines.add(
                        WorkWords.capital(words.undone()) + ": " + figures.area(left.areaHa()) + "; " + left.why()));
    }

    private String spare(FieldWork work) {
        if (work.lateHaDays() > 0) {
            return "late by " + figures.areaDays(work.lateHaDays());
        }
        return work.daysToSpare()
                .map(days -> days == 0
                        ? "in time, on the last day of its window"
                        : "in time, " + Figures.count((int) (long) days, "day", "days") + " to spare")
                .orElse("");
    }

    private void section(String heading, List<String> entries) {
        lines.add("");
        lines.add(heading);
        entries.forEach(entry -> lines.add(entry.isEmpty() ? entry : "  " + entry));
    }

    private String planter(Position position) {
        return why.season().applicators().get(position.planter()).id();
    }

    /** What a plan of the same season does with a field. */
    static FieldWork workOn(Field field, FieldExplanation why, Plan plan) {
        return FieldWork.of(why.season(), plan).stream()
                .filter(work -> work.field().equals(field))
                .findFirst()
                .orElseGet(() -> new FieldWork(field, List.of(), Optional.empty()));
    }
}
