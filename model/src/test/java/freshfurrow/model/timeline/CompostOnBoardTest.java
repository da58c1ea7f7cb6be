package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What rigs have on board in random seasons with lots that have places, which are broken off and gone on with twice. */
class CompostOnBoardTest {
    private static final double ROUNDING = 1e-6;

    @Property(tries = 200)
    void isNeverBelowZeroNorAboveWhatTheRigHolds(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int fields,
            @ForAll @IntRange(max = 999) int first,
            @ForAll @IntRange(max = 999) int second) {
        Season whole = RandomSeasons.withPlacesOfLots(
                RandomSeasons.withoutPlacesOfLots(RandomSeasons.season(seed, fields)), new Random(seed));
        Plan plan = PlanRecorder.record(
                CompiledSeason.of(whole), RandomSeasons.orders(whole, RandomSeasons.lists(whole, seed)), source(whole));
        assertHolds(whole, plan);

        PlanStart start = StandingAt.of(whole, plan, at(whole, Math.min(first, second)));
        Season left = start.remaining(whole);
        Plan rest = goOn(plan, left, start);
        assertHolds(left, rest);
        assertThat(kilograms(whole)).isGreaterThanOrEqualTo(kilograms(left) + usedKg(plan, start) - ROUNDING);

        PlanStart later = StandingAt.of(left, rest, at(whole, Math.max(first, second)));
        assertHolds(later.remaining(whole), goOn(rest, later.remaining(whole), later));
    }

    private static Plan goOn(Plan before, Season left, PlanStart start) {
        return PlanRecorder.record(CompiledSeason.of(left), GoingOnTest.remaining(before, left), source(left), start);
    }

    private static LocalDateTime at(Season season, int moment) {
        return season.start().plusMinutes(moment * (season.days() * 1440L - 1) / 999);
    }

    private static Plan.SeasonSource source(Season season) {
        return new Plan.SeasonSource(season.name(), "season.yaml", "00", season.units());
    }

    private static void assertHolds(Season season, Plan plan) {
        assertThat(Audit.check(season, plan)).isEmpty();
        Map<String, Plan.Batch> batches = new HashMap<>();
        plan.batches().forEach(batch -> batches.put(batch.id(), batch));
        for (Rig rig : season.rigs()) {
            Map<String, Double> onBoard = new LinkedHashMap<>(season.standing()
                    .map(standing -> standing.rigs().get(rig.id()))
                    .map(Standing.OfRig::compostKg)
                    .orElse(Map.of()));
            for (Activity activity : plan.rigs().get(rig.id()).activities()) {
                if (activity instanceof Activity.LoadCompost loading) {
                    onBoard.merge(loading.lot(), loading.kg(), Double::sum);
                } else if (activity instanceof Activity.Extract extract) {
                    batches.get(extract.batch()).lots().forEach((lot, kg) -> onBoard.merge(lot, -kg, Double::sum));
                }
                assertThat(onBoard.values()).allSatisfy(kg -> assertThat(kg).isGreaterThan(-ROUNDING));
                assertThat(sum(onBoard)).isLessThan(rig.mostCompostKg() + ROUNDING);
            }
        }
    }

    private static double kilograms(Season season) {
        return season.compostWithThatOnBoard().stream()
                .mapToDouble(CompostLot::massKg)
                .sum();
    }

    /** What the batches took that had begun. */
    private static double usedKg(Plan plan, PlanStart start) {
        return plan.batches().stream()
                .filter(batch -> batch.start().isBefore(start.now()))
                .mapToDouble(Plan.Batch::compostKg)
                .sum();
    }

    private static double sum(Map<String, Double> kilograms) {
        return kilograms.values().stream().mapToDouble(kg -> kg).sum();
    }
}
