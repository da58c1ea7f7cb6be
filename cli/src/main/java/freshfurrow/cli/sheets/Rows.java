package freshfurrow.cli.sheets;

import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.sheets.Row.Blank;
import freshfurrow.cli.sheets.Row.Part;
import freshfurrow.cli.sheets.Row.Weight;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.Steps;
import freshfurrow.model.mixing.Buckets;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Activities of a day as steps on a sheet. */
final class Rows {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final PlanIndex index;
    private final LocalDate date;
    private final Figures figures;

    Rows(PlanIndex index, LocalDate date, Figures figures) {
        this.index = index;
        this.date = date;
        this.figures = figures;
    }

    /**
     * The step of an activity.
     *
     * @throws IllegalArgumentException when it names a load or batch that the plan does not have
     */
    Row of(Activity activity) {
        if (activity instanceof Activity.Move move) {
            return minor(
                    move,
                    "Drive",
                    List.of(Part.text("to "), place(move.to()), Part.text(", " + figures.distance(move.km()))));
        }
        if (activity instanceof Activity.Wait wait) {
            return new Row(
                    when(wait),
                    Weight.WAIT,
                    "Wait",
                    List.of(Part.text("at "), place(wait.at()), Part.text(Steps.waiting(wait.why()))),
                    List.of(),
                    Optional.empty(),
                    List.of());
        }
        if (activity instanceof Activity.Clean clean) {
            return minor(clean, "Clean", List.of(Part.text("drum and strainer")));
        }
        if (activity instanceof Activity.Draw draw) {
            return main(
                    draw,
                    "Draw",
                    List.of(Part.text(figures.volume(draw.litres()) + " of water at "), place(draw.at())),
                    List.of(),
                    Optional.empty(),
                    List.of(volume("")));
        }
        if (activity instanceof Activity.Extract extract) {
            return batch(extract, index.batch(extract.batch()));
        }
        if (activity instanceof Activity.Transfer transfer) {
            return transfer(transfer, index.load(transfer.load()));
        }
        if (activity instanceof Activity.Fill fill) {
            return fill(fill, index.load(fill.load()));
        }
        if (activity instanceof Activity.Plant plant) {
            return main(
                    plant,
                    "Plant",
                    List.of(Part.text(figures.area(plant.areaHa()) + " in "), place(plant.field())),
                    List.of("from load " + plant.load()),
                    Optional.of(time(index.load(plant.load()).deadline())),
                    List.of(area("")));
        }
        if (activity instanceof Activity.Dump dump) {
            return main(
                    dump,
                    "Let out",
                    List.of(
                            Part.text(figures.volume(dump.litres()) + " of mix that is too old, at "),
                            place(dump.at())),
                    List.of("only where local rules allow it"),
                    Optional.empty(),
                    List.of(volume("")));
        }
        throw new IllegalArgumentException("no row for " + activity);
    }

    /** What a planter has on board when the day begins. */
    Row fromTheDayBefore(OnBoard left) {
        return new Row(
                "before",
                Weight.MAIN,
                "In the tank",
                List.of(Part.text(figures.volume(left.litres()) + " from the day before")),
                List.of("for " + figures.area(left.areaHa()) + ", load "
                        + left.load().id()),
                Optional.of(time(left.load().deadline())),
                List.of(volume("")));
    }

    private Row batch(Activity.Extract extract, Plan.Batch batch) {
        List<String> amounts = new ArrayList<>();
        amounts.add(figures.mass(batch.compostKg()) + " of compost"
                + bucketKg(batch.rig())
                        .map(bucketKg -> " = " + text(Buckets.of(batch.compostKg(), bucketKg)))
                        .orElse("")
                + lots(batch));
        amounts.add(figures.volume(batch.waterL()) + " of water, makes " + figures.volume(batch.waterL())
                + " of concentrate");
        return main(
                extract,
                "Batch",
                List.of(Part.text(batch.id() + " at "), place(extract.at())),
                amounts,
                index.useBy(batch).map(this::time),
                List.of(new Blank("compost", figures.units().mass().symbol()), volume("water")));
    }

    private Row transfer(Activity.Transfer transfer, Plan.Load load) {
        List<String> amounts = new ArrayList<>();
        index.makeUpWaterL(load)
                .ifPresentOrElse(
                        waterL -> amounts.add(figures.volume(load.litres() - waterL) + " of concentrate + "
                                + figures.volume(waterL) + " of water"),
                        () -> amounts.add("mixed together with " + String.join(", ", index.sharers(load))));
        amounts.add("load " + load.id() + " of " + String.join(", ", load.batches()));
        return main(
                transfer,
                "Transfer",
                List.of(
                        Part.text(figures.volume(transfer.litres()) + " into "),
                        Part.name(load.planter()),
                        Part.text(" at "),
                        place(transfer.at())),
                amounts,
                Optional.of(time(load.deadline())),
                List.of(volume("")));
    }

    private Row fill(Activity.Fill fill, Plan.Load load) {
        return main(
                fill,
                "Fill",
                List.of(
                        Part.text(figures.volume(load.litres()) + " from "),
                        Part.name(load.rig()),
                        Part.text(" at "),
                        place(fill.at())),
                List.of(
                        figures.area(OnBoard.wholeAreaHa(index.plan(), load)) + " until the next fill, done by "
                                + time(load.lastDrop()),
                        "load " + load.id() + ", tank " + Figures.percent(index.shareOfTank(load)) + " full"),
                Optional.of(time(load.deadline())),
                List.of(volume("")));
    }

    private String text(Buckets buckets) {
        if (buckets.full() == 0) {
            return "less than a bucket";
        }
        String full = Figures.count(buckets.full(), "bucket", "buckets");
        return buckets.restKg() == 0 ? full : full + " + " + figures.mass(buckets.restKg());
    }

    private Optional<Double> bucketKg(String rig) {
        return Optional.ofNullable(index.plan().rigs().get(rig))
                .flatMap(plan -> plan.bucketKg().stream().boxed().findFirst());
    }

    private String lots(Plan.Batch batch) {
        if (batch.lots().size() < 2) {
            return batch.lots().keySet().stream()
                    .map(lot -> ", from " + lot)
                    .findFirst()
                    .orElse("");
        }
        return batch.lots().entrySet().stream()
                .map(lot -> figures.mass(lot.getValue()) + " from " + lot.getKey())
                .reduce((a, b) -> a + ", " + b)
                .map(lots -> " (" + lots + ")")
                .orElse("");
    }

    private Part place(String id) {
        return Part.name(index.label(id));
    }

    private Blank volume(String of) {
        return new Blank(of, figures.units().volume().symbol());
    }

    private Blank area(String of) {
        return new Blank(of, figures.units().area().symbol());
    }

    private Row minor(Activity activity, String verb, List<Part> subject) {
        return new Row(when(activity), Weight.MINOR, verb, subject, List.of(), Optional.empty(), List.of());
    }

    private Row main(
            Activity activity,
            String verb,
            List<Part> subject,
            List<String> amounts,
            Optional<String> useBy,
            List<Blank> blanks) {
        return new Row(when(activity), Weight.MAIN, verb, subject, amounts, useBy, blanks);
    }

    private String when(Activity activity) {
        boolean since = activity.start().toLocalDate().isBefore(date);
        boolean until = activity.end().isAfter(date.plusDays(1).atStartOfDay());
        if (since && until) {
            return "all day";
        }
        if (since) {
            return "to " + CLOCK.format(activity.end());
        }
        return until
                ? "from " + CLOCK.format(activity.start())
                : CLOCK.format(activity.start()) + "–" + CLOCK.format(activity.end());
    }

    private String time(LocalDateTime time) {
        return Figures.clock(time, date);
    }
}
