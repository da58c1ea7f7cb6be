package freshfurrow.cli.text;

import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The activities of a day as steps for a crew; what the crew acts on is set in capitals. */
public final class Steps {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /**
     * A step of a crew's day in words.
     *
     * @param clock from when to when, as {@code 07:00-07:15}
     * @param verb what is done; in capitals what the crew measures out
     * @param text on what, how much and where
     * @param note by when, and out of what
     * @param isDone whether there is something to do, and so to tick off
     */
    public record Step(String clock, String verb, String text, Optional<String> note, boolean isDone) {
        Step noting(String note) {
            return new Step(clock, verb, text, Optional.of(note), isDone);
        }

        /** All of it on one line. */
        public String line() {
            return (clock + " " + verb + " " + text
                            + note.map(more -> "; " + more).orElse(""))
                    .strip();
        }
    }

    private final PlanIndex plan;
    private final LocalDate date;
    private final Figures figures;

    public Steps(PlanIndex plan, LocalDate date, Figures figures) {
        this.plan = plan;
        this.date = date;
        this.figures = figures;
    }

    /**
     * The step of an activity.
     *
     * @param ofMachine all activities of its machine, in order
     * @throws IllegalArgumentException when it names a load or batch that the plan does not have
     */
    public Step of(Activity activity, List<Activity> ofMachine) {
        return activity.accept(new OfMachine(ofMachine));
    }

    private final class OfMachine implements ActivityVisitor<Step> {
        private final List<Activity> all;

        OfMachine(List<Activity> all) {
            this.all = all;
        }

        @Override
        public Step visit(Activity.Move move) {
            return step(move, "drive", move.from() + " to " + move.to() + ", " + figures.distance(move.km()));
        }

        @Override
        public Step visit(Activity.Wait wait) {
            return waiting(wait, new CrewWaits(date, all));
        }

        @Override
        public Step visit(Activity.Draw draw) {
            return step(draw, "DRAW", figures.volume(draw.litres()) + " of water at " + draw.at());
        }

        @Override
        public Step visit(Activity.Extract extract) {
            return batch(extract, plan.batch(extract.batch()));
        }

        @Override
        public Step visit(Activity.Clean clean) {
            return step(clean, "clean", "drum and strainer, at " + clean.at());
        }

        @Override
        public Step visit(Activity.Transfer transfer) {
            return transfer(transfer, plan.load(transfer.load()));
        }

        @Override
        public Step visit(Activity.Fill fill) {
            return fill(fill, plan.load(fill.load()));
        }

        @Override
        public Step visit(Activity.Plant plant) {
            return step(
                    plant, "PLANT", figures.area(plant.areaHa()) + " in " + plant.field() + ", load " + plant.load());
        }

        @Override
        public Step visit(Activity.Dump dump) {
            return step(dump, "DUMP", figures.volume(dump.litres()) + " of mix that is too old, at " + dump.at());
        }
    }

    private Step batch(Activity.Extract extract, Plan.Batch batch) {
        Step step = step(
                extract,
                "BATCH",
                batch.id() + " at " + extract.at() + ": " + figures.mass(batch.compostKg()) + " of compost"
                        + from(batch.lots()) + " in " + figures.volume(batch.waterL()) + " of water");
        return step.noting(
                plan.useBy(batch).map(deadline -> "USE BY " + time(deadline)).orElse("not used in any load"));
    }

    private Step transfer(Activity.Transfer transfer, Plan.Load load) {
        Step step = step(
                transfer,
                "TRANSFER",
                figures.volume(transfer.litres()) + " into " + load.planter() + " at " + transfer.at() + ", load "
                        + load.id());
        return step.noting(from(load) + "; USE BY " + time(load.deadline()));
    }

    private Step fill(Activity.Fill fill, Plan.Load load) {
        Step step = step(
                fill,
                "FILL",
                figures.volume(load.litres()) + " from " + load.rig() + " at " + fill.at() + ", load " + load.id()
                        + ": " + Figures.tank(plan.shareOfTank(load)));
        return step.noting(lasts(plan, load, figures, date) + "; USE BY " + time(load.deadline()));
    }

    private Step waiting(Activity.Wait wait, CrewWaits waits) {
        String then = waits.then(wait).map(next -> "; " + next).orElse("");
        return switch (waits.kind(wait)) {
            case WAIT -> still(spans(wait), "wait", "at " + wait.at() + CrewWaits.reason(wait.why()) + otherDay(wait));
            case BREAK -> still(spans(wait), "break", "at " + wait.at() + then);
            case DONE -> still(CLOCK.format(wait.start()), "DONE FOR THE DAY.", "Park at " + wait.at() + then);
            case PARKED -> still("", "PARKED", "at " + wait.at() + waits.since(wait) + then);
        };
    }

    private static Step still(String clock, String verb, String text) {
        return new Step(clock, verb, text, Optional.empty(), false);
    }

    /** How far a load goes, as {@code enough for 30.0 ac, empty about 09:10}. */
    public static String lasts(PlanIndex plan, Plan.Load load, Figures figures, LocalDate date) {
        return "enough for " + figures.area(OnBoard.wholeAreaHa(plan.plan(), load)) + ", "
                + (load.dumpedL() > 0 ? "done" : "empty") + " about " + Figures.clock(load.lastDrop(), date);
    }

    private static String from(Plan.Load load) {
        int last = load.batches().size() - 1;
        if (last < 1) {
            return "from batch " + String.join("", load.batches());
        }
        return "from batches " + String.join(", ", load.batches().subList(0, last)) + " and "
                + load.batches().get(last);
    }

    private String from(Map<String, Double> lots) {
        if (lots.size() == 1) {
            return " from " + lots.keySet().iterator().next();
        }
        return lots.isEmpty()
                ? ""
                : " ("
                        + String.join(
                                ", ",
                                lots.entrySet().stream()
                                        .map(lot -> figures.mass(lot.getValue()) + " from " + lot.getKey())
                                        .toList())
                        + ")";
    }

    private Step step(Activity activity, String verb, String text) {
        return new Step(spans(activity), verb, text + otherDay(activity), Optional.empty(), true);
    }

    private static String spans(Activity activity) {
        return CLOCK.format(activity.start()) + "-" + CLOCK.format(activity.end());
    }

    private String otherDay(Activity activity) {
        boolean since = activity.start().toLocalDate().isBefore(date);
        boolean until = activity.end().isAfter(date.plusDays(1).atStartOfDay());
        return (since ? " (since " + Figures.day(activity.start().toLocalDate()) + ")" : "")
                + (until ? " (until " + Figures.day(activity.end().toLocalDate()) + ")" : "");
    }

    private String time(LocalDateTime time) {
        return Figures.clock(time, date);
    }
}
