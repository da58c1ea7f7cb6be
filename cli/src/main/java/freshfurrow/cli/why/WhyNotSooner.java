package freshfurrow.cli.why;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.GroundText;
import freshfurrow.cli.text.TimeUse;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.WetGround;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.Position;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands between the day a field's window opens and its planting: rain, compost, and its planter's other work. */
final class WhyNotSooner {
    private final FieldExplanation why;
    private final Season season;
    private final Figures figures;
    private final WorkWords words;
    private final Field field;
    private final LocalDateTime opens;
    /** When its planting begins, or the season's end when none of it is planted. */
    private final LocalDateTime begins;

    /** When its planting ends, likewise. */
    private final LocalDateTime ends;

    private final boolean planted;
    private final List<String> lines = new ArrayList<>();

    WhyNotSooner(FieldExplanation why, FieldWork work) {
        this.why = why;
        this.season = why.season();
        this.figures = new Figures(season.units());
        this.field = why.field();
        this.words = WorkWords.of(field.work());
        LocalDate first = field.window().first();
        this.opens = (first.isBefore(season.first()) ? season.first() : first).atStartOfDay();
        this.planted = work.start().isPresent();
        LocalDateTime seasonEnds = season.end();
        this.begins = work.start().orElse(seasonEnds);
        this.ends = work.unserved().isPresent() ? seasonEnds : work.end().orElse(seasonEnds);
    }

    List<String> lines() {
        window();
        wetGround();
        why.positions().own().ifPresent(own -> {
            Applicator planter = season.applicators().get(own.planter());
            Plan.PlanterPlan all = why.plan().planters().get(planter.id());
            Plan.PlanterPlan work = until(begins, all);
            compost(until(ends, all));
            others(own, planter, work);
            if (planted) {
                steps(planter, work);
                waits(planter, all);
            }
        });
        return lines;
    }

    private void window() {
        if (planted && begins.toLocalDate().equals(opens.toLocalDate())) {
            lines.add("Its window opens on " + Figures.day(opens.toLocalDate()) + ", and " + words.noun()
                    + " starts that day.");
        } else {
            lines.add("Its window opens on " + Figures.day(opens.toLocalDate())
                    + (planted ? "; " + words.noun() + " starts on " + Figures.day(begins.toLocalDate()) + "." : "."));
        }
    }

    private void wetGround() {
        field.judged().forEach(judgement -> lines.add("It was " + GroundText.said(judgement, season, figures) + "."));
        for (WetGround wet : WetGround.of(season, field.ground())) {
            if (wet.to().isAfter(opens) && wet.from().isBefore(ends)) {
                lines.add("Its ground is too wet from " + figures.moment(wet.from()) + " to " + figures.moment(wet.to())
                        + ".");
            }
        }
    }

    private void compost(Plan.PlanterPlan work) {
        boolean waited = work.activities().stream()
                .anyMatch(activity -> activity instanceof Activity.Wait wait
                        && wait.why() == WaitReason.COMPOST
                        && wait.end().isAfter(opens));
        for (CompostLot lot : season.compost()) {
            LocalDateTime there = lot.from().atStartOfDay();
            if (waited && there.isAfter(opens) && !there.isAfter(ends)) {
                lines.add(WorkWords.capital(words.machines()) + " wait for compost until lot " + lot.id()
                        + " is on hand on " + Figures.day(lot.from()) + ".");
            }
        }
    }

    private void others(Position own, Applicator planter, Plan.PlanterPlan work) {
        if (!begins.isAfter(opens)) {
            return;
        }
        TimeUse use = TimeUse.of(
                work,
                field.id(),
                new DateWindow(opens.toLocalDate(), begins.toLocalDate()),
                planter.hours(),
                season.closed());
        List<String> parts = use.parts().stream()
                .filter(part -> part.howLong().toMinutes() > 0)
                .map(part -> Figures.span(part.howLong()) + " " + part.what())
                .toList();
        if (!parts.isEmpty()) {
            lines.add((planted ? "From then until " + words.noun() + " starts " : "From then on ") + planter.id()
                    + " spends "
                    + String.join(", ", parts)
                    + ".");
        }
        if (own.index() > 0) {
            String before = season.fields()
                    .get(own.lists().of(own.planter()).get(own.index() - 1))
                    .id();
            lastPlanting(work, before)
                    .ifPresent(end -> lines.add(planter.id() + " finishes " + before + ", the field before it, on "
                            + figures.moment(end) + "."));
        }
    }

    private static Optional<LocalDateTime> lastPlanting(Plan.PlanterPlan work, String field) {
        return work.activities().stream()
                .filter(activity -> activity instanceof Activity.Planting planting
                        && planting.field().equals(field))
                .map(Activity::end)
                .reduce((earlier, later) -> later);
    }

    /** What the planter does after its planting before, up to this field's. */
    private void steps(Applicator planter, Plan.PlanterPlan work) {
        List<Activity> steps = new ArrayList<>();
        for (Activity activity : work.activities()) {
            if (activity instanceof Activity.Planting) {
                steps.clear();
            } else {
                steps.add(activity);
            }
        }
        for (Activity step : steps) {
            lines.add(figures.fromTo(step.start(), step.end()) + ": " + planter.id() + " "
                    + step.accept(new Doing(words)) + ".");
        }
    }

    /** Where it stops after it has begun. */
    private void waits(Applicator planter, Plan.PlanterPlan work) {
        for (Activity activity : work.activities()) {
            if (activity instanceof Activity.Wait
                    && activity.start().isAfter(begins)
                    && activity.end().isBefore(ends)
                    && activity.span().toMinutes() > 0) {
                lines.add("During " + words.noun() + ", " + figures.fromTo(activity.start(), activity.end()) + ": "
                        + planter.id() + " " + activity.accept(new Doing(words)) + ".");
            }
        }
    }

    /** What a planter does besides planting. */
    private record Doing(WorkWords words) implements ActivityVisitor.OfPlanter<String> {
        @Override
        public String visit(Activity.Move move) {
            return "drives from " + move.from() + " to " + move.to();
        }

        @Override
        public String visit(Activity.Wait wait) {
            return until(wait.why());
        }

        @Override
        public String visit(Activity.Fill fill) {
            return "fills with load " + fill.load();
        }

        @Override
        public String visit(Activity.Plant plant) {
            return words.does() + " " + plant.field();
        }

        @Override
        public String visit(Activity.PlantWithout planting) {
            return "plants " + planting.field() + " without extract";
        }

        @Override
        public String visit(Activity.Flush flush) {
            return "is flushed";
        }
    }

    private static String until(WaitReason why) {
        return switch (why) {
            case RIG -> "waits for a rig";
            case WET -> "waits until the ground is dry";
            case WINDOW -> "waits until the window opens";
            case HOURS -> "stops until work resumes";
            case COMPOST -> "waits for compost";
            case WATER -> "waits for water";
            case SPRAY_HOURS -> "waits for its spray hours";
        };
    }

    private static Plan.PlanterPlan until(LocalDateTime end, Plan.PlanterPlan plan) {
        return plan.withActivities(plan.activities().stream()
                .filter(activity -> !activity.end().isAfter(end))
                .toList());
    }
}
