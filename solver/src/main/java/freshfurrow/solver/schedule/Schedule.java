package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What the search changes: which fields stand in which planter's list, in what order. */
@PlanningSolution
public final class Schedule {
    private @Nullable SeasonEstimate estimate;
    private @Nullable NearFields near;
    private @Nullable ListScorer scorer;

    @ProblemFactCollectionProperty
    @ValueRangeProvider
    private List<Visit> visits = List.of();

    @PlanningEntityCollectionProperty
    private List<PlanterList> lists = List.of();

    @PlanningScore
    private @Nullable HardMediumSoftLongScore score;

    /** For the solver, which makes copies. */
    Schedule() {}

    private Schedule(
            ListScorer scorer, SeasonEstimate estimate, NearFields near, List<Visit> visits, List<PlanterList> lists) {
        this.scorer = scorer;
        this.estimate = estimate;
        this.near = near;
        this.visits = visits;
        this.lists = lists;
    }

    /**
     * A schedule of the given lists.
     *
     * @param scorer of the lists of this schedule, and no other thread's
     * @param fields indices of fields for each planter of the season; a field stands in one list at most
     */
    public static Schedule of(ListScorer scorer, SeasonEstimate estimate, NearFields near, FieldLists fields) {
        CompiledSeason season = scorer.season();
        int entries = season.fieldCount() * (season.mayGoWithout() ? 2 : 1);
        List<Visit> visits = IntStream.range(0, entries)
                .mapToObj(entry -> new Visit(entry, season.named(entry)))
                .toList();
        List<PlanterList> lists = new ArrayList<>();
        for (int planter = 0; planter < season.planterCount(); planter++) {
            lists.add(new PlanterList(
                    planter,
                    fields.of(planter).stream()
                            .map(field -> visits.get(fields.entry(season, field)))
                            .toList()));
        }
        return new Schedule(scorer, estimate, near, visits, lists);
    }

    public CompiledSeason season() {
        return scorer().season();
    }

    ListScorer scorer() {
        if (scorer == null) {
            throw new IllegalStateException("a schedule without a scorer");
        }
        return scorer;
    }

    public SeasonEstimate estimate() {
        if (estimate == null) {
            throw new IllegalStateException("a schedule without an estimate");
        }
        return estimate;
    }

    public NearFields near() {
        if (near == null) {
            throw new IllegalStateException("a schedule without near fields");
        }
        return near;
    }

    /** One for each planter of the season, in its order. */
    public List<PlanterList> lists() {
        return Collections.unmodifiableList(lists);
    }

    /**
     * One for each field of the season, in its order, whether in a list or not; then another for each field to be planted without extract, where
     * that is allowed. At most one of the two of a field stands in a list.
     */
    public List<Visit> visits() {
        return visits;
    }

    /**
     * The score that the solver last gave it.
     *
     * @throws IllegalStateException when it has not been solved
     */
    public HardMediumSoftLongScore score() {
        if (score == null) {
            throw new IllegalStateException("a schedule that was not solved has no score");
        }
        return score;
    }

    /** The lists as they are now. */
    public FieldLists fields() {
        return new FieldLists(
                lists.stream()
                        .map(list -> list.visits().stream().map(Visit::field).toList())
                        .toList(),
                lists.stream()
                        .flatMap(list -> list.visits().stream())
                        .filter(Visit::isWithoutExtract)
                        .map(Visit::field)
                        .collect(Collectors.toSet()));
    }
}
