package freshfurrow.cli.text;

import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
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
     */
    public record Step(String clock, String verb, String text, Optional<String> note) {
        Step noting(String note) {
            return new Step(clock, verb, text, Optional.of(note));
        }

        /** All of it on one line. */
        public String line() {
            return clock + " " + verb + " " + text
                    + note.map(more -> "; " + more).orElse("");
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
     * @throws IllegalArgumentException when it names a load or batch that the plan does not have
     */
    public Step of(Activity activity) {
        if (activity instanceof Activity.Move move) {
            return step(move, "drive", move.from() + " to " + move.to() + ", " + figures.distance(move.km()));
        }
        if (activity instanceof Activity.Wait wait) {
            return step(wait, "wait", "at " + wait.at() + waiting(wait.why()));
        }
        if (activity instanceof Activity.Draw draw) {
            return step(draw, "DRAW", figures.volume(draw.litres()) + " of water at " + draw.at());
        }
        if (activity instanceof Activity.Extract extract) {
            return batch(extract, plan.batch(extract.batch()));
        }
        if (activity instanceof Activity.Clean clean) {
            return step(clean, "clean", "drum and strainer, at " + clean.at());
        }
        if (activity instanceof Activity.Transfer transfer) {
            return transfer(transfer, plan.load(transfer.load()));
        }
        if (activity instanceof Activity.Fill fill) {
            return fill(fill, plan.load(fill.load()));
        }
        if (activity instanceof Activity.Plant plant) {
            return step(
                    plant, "PLANT", figures.area(plant.areaHa()) + " in " + plant.field() + ", load " + plant.load());
        }
        if (activity instanceof Activity.Dump dump) {
            return step(dump, "DUMP", figures.volume(dump.litres()) + " of mix that is too old, at " + dump.at());
        }
        throw new IllegalArgumentException("no step for " + activity);
    }

    private Step batch(Activity.Extract extract, Plan.Batch batch) {
        Step step = step(
                extract,
                "BATCH",
                batch.id() + " at " + extract.at() + ": " + figures.mass(batch.compostKg()) + " of compost"
                        + from(batch.lots()) + " in " + figures.volume(batch.waterL()) + " of water");
        return step.noting(
                plan.useBy(batch).map(deadline -> "USE BY " + time(deadline)).orElse("goes into no load"));
    }

    private Step transfer(Activity.Transfer transfer, Plan.Load load) {
        Step step = step(
                transfer,
                "TRANSFER",
                figures.volume(transfer.litres()) + " into " + load.planter() + " at " + transfer.at() + ", load "
                        + load.id());
        return step.noting("of " + String.join(", ", load.batches()) + "; USE BY " + time(load.deadline()));
    }

    private Step fill(Activity.Fill fill, Plan.Load load) {
        Step step = step(
                fill,
                "FILL",
                figures.volume(load.litres()) + " from " + load.rig() + " at " + fill.at() + ", load " + load.id()
                        + ": tank " + Figures.percent(plan.shareOfTank(load)) + " full");
        return step.noting(figures.area(OnBoard.wholeAreaHa(plan.plan(), load)) + " until the next fill, done by "
                + time(load.lastDrop()) + "; USE BY " + time(load.deadline()));
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

    /** The reason of a wait, to stand behind its place. */
    public static String waiting(WaitReason why) {
        return switch (why) {
            case RIG -> " for the rig";
            case WET -> ", too wet to plant";
            case WINDOW -> " for a window to open";
            case HOURS -> " for working hours";
            case COMPOST -> " for compost";
            case WATER -> " for water";
        };
    }

    private Step step(Activity activity, String verb, String text) {
        return new Step(
                CLOCK.format(activity.start()) + "-" + CLOCK.format(activity.end()),
                verb,
                text + otherDay(activity),
                Optional.empty());
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
