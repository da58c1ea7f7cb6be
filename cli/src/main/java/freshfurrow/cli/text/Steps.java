package freshfurrow.cli.text;

import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.day.PlannedMachine;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The activities of a day as steps for a crew; what the crew acts on is set in capitals. */
public final class Steps {
    /**
     * A step of a crew's day in words.
     *
     * @param clock about when it begins, as {@code 7:15 am}; empty when that was on a day before
     * @param verb what is done; in capitals what the crew measures out
     * @param text on what, how much and where
     * @param note by when, and out of what
     * @param isTicked whether the crew ticks it off: a batch, a load, a stop at water
     */
    public record Step(String clock, String verb, String text, Optional<String> note, boolean isTicked) {
        Step noting(String note) {
            return new Step(clock, verb, text, Optional.of(note), isTicked);
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
    private final CrewClock clock;

    public Steps(PlanIndex plan, LocalDate date, Figures figures) {
        this.plan = plan;
        this.date = date;
        this.figures = figures;
        clock = figures.crewClock(date);
    }

    /**
     * The steps of a machine on the date, in order.
     *
     * @throws IllegalArgumentException when one names a load or batch that the plan does not have
     */
    public List<Step> of(PlannedMachine machine) {
        return of(
                machine,
                machine.activities().stream()
                        .filter(activity -> MachineDay.touches(activity, date))
                        .toList());
    }

    /** The steps of some activities of a machine. */
    public List<Step> of(PlannedMachine machine, List<Activity> some) {
        OfMachine steps = new OfMachine(machine);
        return some.stream()
                .filter(clock::isTold)
                .map(activity -> activity.accept(steps))
                .toList();
    }

    private final class OfMachine implements ActivityVisitor<Step> {
        private final PlannedMachine machine;

        OfMachine(PlannedMachine machine) {
            this.machine = machine;
        }

        @Override
        public Step visit(Activity.Move move) {
            return step(move, "drive", "to " + plan.label(move.to()) + ", " + figures.distance(move.km()));
        }

        @Override
        public Step visit(Activity.Wait wait) {
            return waiting(wait, new CrewWaits(clock, machine));
        }

        @Override
        public Step visit(Activity.Draw draw) {
            return ticked(draw, "DRAW", figures.volume(draw.litres()) + " of water at " + plan.label(draw.at()));
        }

        @Override
        public Step visit(Activity.LoadCompost loading) {
            return ticked(
                    loading,
                    "LOAD",
                    figures.mass(loading.kg()) + " of " + loading.lot() + buckets(machine.id(), loading.kg()) + " at "
                            + plan.label(loading.at()));
        }

        @Override
        public Step visit(Activity.Extract extract) {
            return batch(extract, plan.batch(extract.batch()));
        }

        @Override
        public Step visit(Activity.Clean clean) {
            return step(clean, "clean", "drum and strainer");
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
                    plant,
                    plan.workOf(plan.load(plant.load()).planter()).name(),
                    figures.area(plant.areaHa()) + " in " + plan.label(plant.field()) + fixed(plant) + ", load "
                            + plant.load());
        }

        private String fixed(Activity.Planting planting) {
            return plan.isFixed(planting.field()) ? " (fixed)" : "";
        }

        @Override
        public Step visit(Activity.PlantWithout planting) {
            return step(
                    planting,
                    "PLANT",
                    figures.area(planting.areaHa()) + " in " + plan.label(planting.field()) + fixed(planting)
                            + " without extract");
        }

        @Override
        public Step visit(Activity.Flush flush) {
            return step(flush, "flush", "the lines at " + plan.label(flush.at()));
        }

        @Override
        public Step visit(Activity.Dump dump) {
            return ticked(
                    dump,
                    "DUMP",
                    figures.volume(dump.litres()) + " of mix that is too old, only where local rules allow it, at "
                            + plan.label(dump.at()));
        }

        @Override
        public Step visit(Activity.SetUp setUp) {
            return step(setUp, "set up", "at " + plan.label(setUp.at()));
        }

        @Override
        public Step visit(Activity.CloseUp closeUp) {
            return step(closeUp, "close up", "at " + plan.label(closeUp.at()));
        }
    }

    private Step batch(Activity.Extract extract, Plan.Batch batch) {
        Step step = ticked(
                extract,
                "BATCH",
                batch.id() + " at " + plan.label(extract.at()) + ": " + figures.mass(batch.compostKg()) + " of compost"
                        + from(batch.lots()) + buckets(batch.rig(), batch.compostKg()) + " in "
                        + figures.volume(batch.waterL()) + " of water");
        return step.noting(plan.useBy(batch)
                .map(deadline -> "USE BY " + clock.by(deadline))
                .orElse("not used in any load"));
    }

    private Step transfer(Activity.Transfer transfer, Plan.Load load) {
        if (plan.isForItself(load)) {
            return ticked(
                            transfer,
                            "READY",
                            figures.volume(transfer.litres()) + " to spray with " + load.planter() + " at "
                                    + plan.label(transfer.at()) + ", load " + load.id())
                    .noting(from(load) + "; " + lasts(plan, load, figures, date) + "; USE BY "
                            + clock.by(load.deadline()));
        }
        Step step = ticked(
                transfer,
                "TRANSFER",
                figures.volume(transfer.litres()) + " into " + load.planter() + " at " + plan.label(transfer.at())
                        + ", load " + load.id());
        return step.noting(from(load) + "; USE BY " + clock.by(load.deadline()));
    }

    private Step fill(Activity.Fill fill, Plan.Load load) {
        Step step = ticked(
                fill,
                "FILL",
                figures.volume(load.litres()) + " from " + load.rig() + " at " + plan.label(fill.at()) + ", load "
                        + load.id() + ": " + Figures.tank(plan.shareOfTank(load)));
        return step.noting(lasts(plan, load, figures, date) + "; USE BY " + clock.by(load.deadline()));
    }

    private Step waiting(Activity.Wait wait, CrewWaits waits) {
        String then = waits.then(wait).map(next -> "; " + next).orElse("");
        String at = plan.label(wait.at());
        return switch (waits.kind(wait)) {
            case WAIT -> still(begins(wait), "wait", "at " + at + waits.reason(wait) + otherDay(wait));
            case BREAK -> still(begins(wait), "break", "at " + at + then);
            case DONE -> still(begins(wait), "DONE FOR THE DAY.", "Park at " + at + then);
            case PARKED -> still("", "PARKED", "at " + at + waits.since(wait) + then);
        };
    }

    private static Step still(String clock, String verb, String text) {
        return new Step(clock, verb, text, Optional.empty(), false);
    }

    /** How far a load goes, as {@code enough for 30.0 ac, empty about 9:10 am}. */
    public static String lasts(PlanIndex plan, Plan.Load load, Figures figures, LocalDate date) {
        return "enough for " + figures.area(OnBoard.wholeAreaHa(plan.plan(), load)) + ", "
                + (load.dumpedL() > 0 ? "done" : "empty") + " about "
                + figures.crewClock(date).lastDrop(load)
                + inHand(load)
                + HowSure.ofLoad(plan.plan(), load);
    }

    /** A word of warning where a load leaves less time in hand than is usual. */
    public static String inHand(Plan.Load load) {
        return load.intoReserve() ? ", LITTLE TIME IN HAND" : "";
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
                : ": "
                        + String.join(
                                ", ",
                                lots.entrySet().stream()
                                        .map(lot -> figures.mass(lot.getValue()) + " from " + lot.getKey())
                                        .toList());
    }

    private Step step(Activity activity, String verb, String text) {
        return new Step(begins(activity), verb, text + otherDay(activity), Optional.empty(), false);
    }

    private Step ticked(Activity activity, String verb, String text) {
        Step step = step(activity, verb, text);
        return new Step(step.clock, verb, step.text, step.note, true);
    }

    private String begins(Activity activity) {
        return activity.start().toLocalDate().isBefore(date) ? "" : clock.about(activity.start());
    }

    private String buckets(String rig, double kg) {
        return Optional.ofNullable(plan.plan().rigs().get(rig))
                .map(its -> new LoadingText(figures).buckets(kg, its.bucketKg()))
                .orElse("");
    }

    private String otherDay(Activity activity) {
        boolean since = activity.start().toLocalDate().isBefore(date);
        boolean until = activity.end().isAfter(date.plusDays(1).atStartOfDay());
        return (since ? " (since " + clock.day(activity.start().toLocalDate()) + ")" : "")
                + (until ? " (until about " + clock.about(activity.end()) + ")" : "");
    }
}
