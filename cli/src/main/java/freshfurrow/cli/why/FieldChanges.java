package freshfurrow.cli.why;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Field;
import freshfurrow.solver.why.FieldExplanation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which fields another plan of the season plants later after their windows, or sooner, which it leaves or adds, and which go with or without extract. */
final class FieldChanges {
    private static final int MOST_NAMED = 5;
    private final FieldExplanation why;
    private final Figures figures;

    private record Change(Field field, double unservedHa, double lateHaDays, double withoutExtractHa) {
        double size() {
            return Math.abs(lateHaDays) + Math.abs(unservedHa) + Math.abs(withoutExtractHa);
        }
    }

    FieldChanges(FieldExplanation why, Figures figures) {
        this.why = why;
        this.figures = figures;
    }

    /** The largest changes first, a field an entry, unweighted. */
    List<String> lines(Plan other) {
        List<FieldWork> before = FieldWork.of(why.season(), why.plan());
        List<FieldWork> after = FieldWork.of(why.season(), other);
        List<Change> changes = new ArrayList<>();
        for (int field = 0; field < before.size(); field++) {
            Change change = new Change(
                    before.get(field).field(),
                    unservedHa(after.get(field)) - unservedHa(before.get(field)),
                    after.get(field).lateHaDays() - before.get(field).lateHaDays(),
                    after.get(field).withoutExtractHa() - before.get(field).withoutExtractHa());
            if (change.size() > Plan.LEAST_HA) {
                changes.add(change);
            }
        }
        changes.sort(Comparator.comparingDouble(Change::size).reversed());
        List<String> named = new ArrayList<>(
                changes.stream().limit(MOST_NAMED).map(this::text).toList());
        if (changes.size() > MOST_NAMED) {
            named.add("and " + (changes.size() - MOST_NAMED) + " more");
        }
        return named;
    }

    private String text(Change change) {
        List<String> parts = new ArrayList<>();
        if (Math.abs(change.lateHaDays) > Plan.LEAST_HA) {
            parts.add(sign(change.lateHaDays) + figures.areaDays(Math.abs(change.lateHaDays)) + " late");
        }
        if (Math.abs(change.unservedHa) > Plan.LEAST_HA) {
            parts.add(sign(change.unservedHa) + figures.area(Math.abs(change.unservedHa)) + " "
                    + WorkWords.of(change.field.work()).undone());
        }
        if (Math.abs(change.withoutExtractHa) > Plan.LEAST_HA) {
            parts.add(sign(change.withoutExtractHa) + figures.area(Math.abs(change.withoutExtractHa))
                    + " without extract");
        }
        return change.field.id() + " " + String.join(" and ", parts);
    }

    private static double unservedHa(FieldWork work) {
        return work.unserved().map(Plan.Unserved::areaHa).orElse(0.0);
    }

    private static String sign(double change) {
        return change < 0 ? "-" : "+";
    }
}
