package freshfurrow.cli.changes;

import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.PlanReport;
import freshfurrow.cli.text.Table;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** What a plan that was made again changes, for people to read. */
public final class ChangesReport {
    private static final int WIDTH = 110;

    private final Season left;
    private final RestOfPlan before;
    private final RestOfPlan after;
    private final Figures figures;
    private final WorkWords words;
    private final List<String> lines = new ArrayList<>();

    private ChangesReport(Season left, RestOfPlan before, RestOfPlan after) {
        this.left = left;
        this.before = before;
        this.after = after;
        figures = new Figures(left.units());
        words = WorkWords.of(left);
    }

    /**
     * The report, a line an entry.
     *
     * @param left what is left of the season; it is under way
     * @param plannedBefore what the plan before was made for
     */
    public static List<String> lines(Season left, Plan plan, Season plannedBefore, Plan planBefore) {
        LocalDateTime now = left.standing().map(Standing::now).orElseThrow();
        ChangesReport report = new ChangesReport(
                left, new RestOfPlan(plannedBefore, planBefore, now), new RestOfPlan(left, plan, now));
        report.figures();
        report.promises();
        report.moved();
        List<String> advice = Advice.lines(left, plan, planBefore);
        if (!advice.isEmpty()) {
            report.lines.add("");
            report.lines.add("What to do now");
            advice.forEach(line -> report.lines.add("  " + line));
        }
        report.lines.addAll(PlanReport.brokenPromises(left, plan));
        return report.lines;
    }

    private void figures() {
        List<List<String>> rows = new ArrayList<>();
        Map<String, LocalDateTime> was = before.finishByCrop();
        Map<String, LocalDateTime> is = after.finishByCrop();
        TreeSet<String> crops = new TreeSet<>(was.keySet());
        crops.addAll(is.keySet());
        crops.forEach(crop -> rows.add(List.of(
                crop + " finished", day(Optional.ofNullable(was.get(crop))), day(Optional.ofNullable(is.get(crop))))));
        rows.add(List.of("Late", figures.areaDays(before.lateHaDays()), figures.areaDays(after.lateHaDays())));
        rows.add(List.of(
                WorkWords.capital(words.undone()),
                figures.area(before.unservedHa()),
                figures.area(after.unservedHa())));
        rows.add(List.of("Fills", Integer.toString(before.fills()), Integer.toString(after.fills())));
        rows.add(List.of("Compost", figures.mass(before.compostKg()), figures.mass(after.compostKg())));
        rows.add(List.of("Dumped", figures.volume(before.dumpedL()), figures.volume(after.dumpedL())));
        rows.add(List.of("Compost runs out", day(before.firstStockOut()), day(after.firstStockOut())));
        lines.add(String.format(Locale.ROOT, "%-18s %18s %18s", "From now on", "old plan", "new plan"));
        rows.forEach(
                row -> lines.add(String.format(Locale.ROOT, "%-18s %18s %18s", row.get(0), row.get(1), row.get(2))));
    }

    private static String day(Optional<LocalDateTime> time) {
        return time.map(at -> Figures.day(at.toLocalDate())).orElse("-");
    }

    private void promises() {
        Map<String, Standing.Promise> promised =
                left.standing().map(Standing::promised).orElse(Map.of());
        Map<String, Standing.Promise> planned = after.fields();
        long kept = promised.entrySet().stream()
                .filter(promise -> promise.getValue().equals(planned.get(promise.getKey())))
                .count();
        long wet = left.fields().stream()
                .filter(field -> promised.containsKey(field.id()))
                .filter(field -> MovedField.wetUntil(
                                left, field, promised.get(field.id()).day())
                        .isPresent())
                .count();
        lines.add("");
        lines.add(promises(promised.size(), (int) kept, (int) wet));
    }

    private String promises(int all, int kept, int wet) {
        String due = "due in the next " + Figures.count(left.goals().steadyDays(), "day", "days");
        if (all == 0) {
            return "No fields were " + due + ".";
        }
        if (kept == all) {
            return all == 1
                    ? "The field " + due + " keeps its " + words.machine() + " and day."
                    : (all == 2 ? "Both" : "All " + all) + " fields " + due + " keep their " + words.machine()
                            + " and day.";
        }
        if (all == 1) {
            return "The field " + due + " does not keep its " + words.machine() + " and day"
                    + (wet > 0 ? ": it is too wet." : ".");
        }
        String some = kept == 0 ? "none keeps its" : kept == 1 ? "1 keeps its" : kept + " keep their";
        String ground = wet == all
                ? (all == 2 ? ": both" : ": all " + all) + " are too wet"
                : ": " + wet + (wet == 1 ? " is" : " are") + " too wet";
        return "Of the " + all + " fields " + due + ", " + some + " " + words.machine() + " and day"
                + (wet > 0 ? ground : "") + ".";
    }

    private void moved() {
        List<MovedField> moved = MovedField.of(left, before.fields(), after.fields());
        if (moved.isEmpty()) {
            lines.add("No field moves.");
            return;
        }
        lines.add("");
        lines.add("Fields that move");
        Table table = new Table(
                WIDTH, List.of(Table.Column.left("Field"), Table.Column.left("from"), Table.Column.left("to")), "why");
        for (MovedField field : moved) {
            table.row(
                    List.of(
                            field.field().id(),
                            place(field.from()),
                            field.to().map(ChangesReport::place).orElse("-")),
                    List.of(field.why()));
        }
        table.lines().forEach(line -> lines.add("  " + line));
    }

    private static String place(Standing.Promise promise) {
        return promise.planter() + " " + Figures.day(promise.day());
    }
}
