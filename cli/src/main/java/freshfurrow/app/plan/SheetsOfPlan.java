package freshfurrow.app.plan;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.output.OutFiles;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.sheets.CrewSheets;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.plan.Plan;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The crews' sheets of a plan, to print.
 *
 * @param count one a day and machine
 */
public record SheetsOfPlan(Path file, int count) {
    /**
     * Writes them; empty when the plan has no work on any day, and there are none.
     *
     * @param day that day only
     * @param out the file to write; without it, one beside the plan
     * @param force whether a file that is there may be replaced
     * @throws Refused when the plan cannot be read or has no work on that day, or the sheets cannot be written
     */
    public static Optional<SheetsOfPlan> write(
            GivenPlan given, Optional<LocalDate> day, Optional<Path> out, boolean force) {
        Plan plan = given.read();
        List<MachineDay> days = days(plan, day);
        if (days.isEmpty()) {
            return Optional.empty();
        }
        Path file = out.orElseGet(() -> given.file()
                .resolveSibling("sheets" + day.map(date -> "-" + date).orElse("") + ".html"));
        OutFiles.MADE.writeAll(List.of(NewFile.of(file, CrewSheets.html(plan, days), IfThere.replaceIf(force))));
        return Optional.of(new SheetsOfPlan(file, days.size()));
    }

    /**
     * Their text; empty when the plan has no work on any day.
     *
     * @param day that day only
     * @throws Refused when the plan cannot be read or has no work on that day
     */
    public static Optional<String> html(GivenPlan given, Optional<LocalDate> day) {
        Plan plan = given.read();
        List<MachineDay> days = days(plan, day);
        return days.isEmpty() ? Optional.empty() : Optional.of(CrewSheets.html(plan, days));
    }

    /** Empty when the plan has no work on any day. */
    private static List<MachineDay> days(Plan plan, Optional<LocalDate> day) {
        List<MachineDay> all = MachineDay.withOrders(plan);
        List<MachineDay> days = all.stream()
                .filter(one -> day.isEmpty() || one.date().equals(day.get()))
                .toList();
        if (days.isEmpty() && !all.isEmpty()) {
            throw new Refused(new PlanRefusal.NoWorkOn(
                    day.orElseThrow(),
                    all.get(0).date(),
                    all.get(all.size() - 1).date()));
        }
        return days;
    }
}
