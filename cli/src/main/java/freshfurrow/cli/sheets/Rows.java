package freshfurrow.cli.sheets;

import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.sheets.Row.Part;
import freshfurrow.cli.sheets.Row.Weight;
import freshfurrow.cli.text.CrewWaits;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A machine's day as steps. To keep a day on a sheet, a cleaning stands on the row of what it follows, a drive to water on that
 * of the draw, and a place only where the machine comes to it.
 */
final class Rows implements ActivityVisitor<Row> {
    private final Words words;
    private final CrewWaits waits;
    private final RigRows rig;
    private final PlanterRows planter;
    private final List<Row> rows = new ArrayList<>();
    private Optional<String> known = Optional.empty();
    private boolean wasDrive;
    private boolean canBeCleanedAfter;

    private Rows(Words words, CrewWaits waits, boolean severalLots) {
        this.words = words;
        this.waits = waits;
        rig = new RigRows(words, waits.machine().id(), severalLots);
        planter = new PlanterRows(words);
    }

    /**
     * The steps in time order.
     *
     * @param onBoard what a planter has in its tank when the day begins
     * @throws IllegalArgumentException when an activity names a load or batch that the plan does not have
     */
    static List<Row> of(MachineDay day, Optional<OnBoard> onBoard, Words words) {
        CrewWaits waits = new CrewWaits(words.clock(), day.machine());
        Rows all = new Rows(words, waits, Lots.of(day, words.index()).size() > 1);
        onBoard.map(all.planter::fromTheDayBefore).ifPresent(all.rows::add);
        day.activities().stream().filter(all::isTold).forEach(all::add);
        return List.copyOf(all.rows);
    }

    /** The next step of a rig tells how long it waits. */
    private boolean isTold(Activity activity) {
        boolean waitsInTheDay = activity instanceof Activity.Wait wait && waits.kind(wait) == CrewWaits.Kind.WAIT;
        return words.clock().isTold(activity)
                && !(waitsInTheDay && waits.machine().kind().isRig());
    }

    private void add(Activity activity) {
        int last = rows.size() - 1;
        if (activity instanceof Activity.Clean && canBeCleanedAfter) {
            rows.set(last, rows.get(last).withCleaning());
        } else if (activity instanceof Activity.Draw draw && wasDrive) {
            rows.set(last, rows.get(last).and(rig.draw(draw, known)));
        } else {
            rows.add(activity.accept(this));
        }
        wasDrive = activity instanceof Activity.Move;
        canBeCleanedAfter = activity instanceof Activity.Extract || activity instanceof Activity.Transfer;
        known = Optional.of(activity.endsAt());
    }

    @Override
    public Row visit(Activity.Clean clean) {
        return rig.clean(clean);
    }

    @Override
    public Row visit(Activity.Draw draw) {
        return rig.draw(draw, known);
    }

    @Override
    public Row visit(Activity.LoadCompost loading) {
        return rig.load(loading, known);
    }

    @Override
    public Row visit(Activity.Extract extract) {
        return rig.batch(extract, known);
    }

    @Override
    public Row visit(Activity.Transfer transfer) {
        return rig.transfer(transfer, known);
    }

    @Override
    public Row visit(Activity.Dump dump) {
        return rig.dump(dump, known);
    }

    @Override
    public Row visit(Activity.SetUp setUp) {
        return rig.setUp(setUp, known);
    }

    @Override
    public Row visit(Activity.CloseUp closeUp) {
        return rig.closeUp(closeUp, known);
    }

    @Override
    public Row visit(Activity.Fill fill) {
        return planter.fill(fill, known);
    }

    @Override
    public Row visit(Activity.Plant plant) {
        return planter.plant(plant);
    }

    @Override
    public Row visit(Activity.PlantWithout planting) {
        return planter.plant(planting);
    }

    @Override
    public Row visit(Activity.Flush flush) {
        return planter.flush(flush, known);
    }

    @Override
    public Row visit(Activity.Move move) {
        return new Row(
                words.begins(move),
                Weight.MINOR,
                List.of(
                        Part.verb("Drive"),
                        Part.text(" to "),
                        words.place(move.to()),
                        Part.text(", " + words.figures().distance(move.km()))),
                Optional.empty(),
                List.of());
    }

    @Override
    public Row visit(Activity.Wait wait) {
        Part then = Part.text(waits.then(wait).map(next -> "; " + next).orElse(""));
        List<Part> parts = new ArrayList<>();
        switch (waits.kind(wait)) {
            case WAIT -> {
                parts.addAll(words.at(known, wait.at(), Part.verb("Wait")));
                parts.add(Part.text(waits.reason(wait)));
            }
            case BREAK -> {
                parts.addAll(words.at(known, wait.at(), Part.verb("Break")));
                parts.add(then);
            }
            case DONE -> {
                parts.addAll(
                        List.of(Part.verb("Done for the day"), Part.text(". Park at "), words.place(wait.at()), then));
            }
            case PARKED -> {
                parts.addAll(List.of(
                        Part.verb("Parked"),
                        Part.text(" at "),
                        words.place(wait.at()),
                        Part.text(waits.since(wait)),
                        then));
            }
        }
        return new Row(words.begins(wait), Weight.WAIT, parts, Optional.empty(), List.of());
    }
}
