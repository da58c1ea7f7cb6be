package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What people call the work on some fields, those who do it and what is left of it: planting, spraying, or both. */
public record WorkWords(Set<Work> works) {
    public WorkWords {
        works = Set.copyOf(works);
    }

    /** Of all machines of a plan. */
    public static WorkWords of(Plan plan) {
        return of(plan.planters().values().stream().map(Plan.PlanterPlan::work).toList());
    }

    /** Of all machines of a season. */
    public static WorkWords of(Season season) {
        return of(season.applicators().stream().map(Applicator::work).toList());
    }

    public static WorkWords of(Work work) {
        return of(List.of(work));
    }

    private static WorkWords of(Collection<Work> works) {
        return new WorkWords(works.isEmpty() ? EnumSet.of(Work.PLANT) : EnumSet.copyOf(works));
    }

    /** As {@code plant}, {@code spray}, or {@code plant or spray}. */
    public String verb() {
        return each(Work::key, " or ");
    }

    /** As {@code plants}, {@code sprays}, or {@code plants or sprays}. */
    public String does() {
        return each(work -> work.key() + "s", " or ");
    }

    /** As {@code planting}, {@code spraying}, or {@code planting or spraying}. */
    public String noun() {
        return each(work -> work.key() + "ing", " or ");
    }

    /** As {@code planted}, {@code sprayed}, or {@code planted or sprayed}. */
    public String done() {
        return each(WorkWords::past, " or ");
    }

    /** As {@code unplanted}, {@code unsprayed}, or {@code unplanted or unsprayed}. */
    public String undone() {
        return each(work -> "un" + past(work), " or ");
    }

    /** As {@code unplanted or without extract}, or {@code unplanted, unsprayed or without extract}. */
    public String undoneOrWithoutExtract() {
        return each(work -> "un" + past(work), ", ") + " or without extract";
    }

    /**
     * Area that a plan is judged by before all else, of the kinds that there are.
     *
     * @param late whether any is late or unplanted
     */
    String lateArea(boolean late, boolean withoutExtract) {
        if (!withoutExtract) {
            return "late or " + undone() + " area";
        }
        return late ? "area that is late, " + undoneOrWithoutExtract() : "area without extract";
    }

    /** As {@code planter, sprayer or rig}. */
    public String machineOrRig() {
        return each(WorkWords::machine, ", ") + " or rig";
    }

    /** As {@code planter}, {@code sprayer}, or {@code planter or sprayer}. */
    public String machine() {
        return each(WorkWords::machine, " or ");
    }

    /** As {@code planters}, {@code sprayers}, or {@code planters and sprayers}. */
    public String machines() {
        return each(work -> machine(work) + "s", " and ");
    }

    /** As {@code planters and rigs}, or {@code planters, sprayers and rigs}. */
    public String machinesAndRigs() {
        return each(work -> machine(work) + "s", ", ") + " and rigs";
    }

    /** Words that begin a sentence. */
    public static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String past(Work work) {
        return work.key() + "ed";
    }

    private static String machine(Work work) {
        return work.key() + "er";
    }

    private String each(Function<Work, String> word, String between) {
        return works.stream().sorted().map(word).collect(Collectors.joining(between));
    }
}
