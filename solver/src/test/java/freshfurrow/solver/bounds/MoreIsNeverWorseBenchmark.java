package freshfurrow.solver.bounds;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.example.OptimisingJvm;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * In how many random seasons of one to four fields the best of all plans becomes worse when there is more of something. Not part
 * of the tests, as its name keeps it out of them; docs/developing/benchmarks.md shows a run.
 */
class MoreIsNeverWorseBenchmark {
    private static final int SEASONS = Integer.getInteger("seasons", 1000);
    private static final int MOST_FIELDS = 4;
    private static final Map<String, BiFunction<Season, Long, Season>> MORE = more();

    @Test
    void measure() {
        OptimisingJvm.require();
        Map<String, int[]> worse = new LinkedHashMap<>();
        MORE.keySet().forEach(more -> worse.put(more, new int[3]));
        for (long seed = 1; seed <= SEASONS; seed++) {
            Season season = RandomSeasons.season(seed, MOST_FIELDS);
            Optional<HardMediumSoftLongScore> before = best(season);
            if (before.isEmpty()) {
                continue;
            }
            for (Map.Entry<String, BiFunction<Season, Long, Season>> more : MORE.entrySet()) {
                Optional<HardMediumSoftLongScore> after = best(more.getValue().apply(season, seed));
                if (after.isEmpty()) {
                    continue;
                }
                int[] counts = worse.get(more.getKey());
                counts[0]++;
                long medium = after.get().mediumScore() - before.get().mediumScore();
                long soft = after.get().softScore() - before.get().softScore();
                // scores are rounded
                counts[1] += medium < -1 ? 1 : 0;
                counts[2] += medium == 0 && soft < -1 ? 1 : 0;
                if (medium < -1 || (medium == 0 && soft < -1)) {
                    print(more.getKey() + ", season " + seed + ": " + before.get() + " to " + after.get());
                }
            }
        }
        worse.forEach((more, counts) ->
                print("| " + more + " | " + counts[0] + " | " + counts[1] + " | " + counts[2] + " |"));
    }

    private static Optional<HardMediumSoftLongScore> best(Season season) {
        CompiledSeason compiled = CompiledSeason.of(season);
        return Enumeration.best(compiled, StopSignal.untilTold()).map(lists -> new ListPlayer(compiled).score(lists));
    }

    private static Map<String, BiFunction<Season, Long, Season>> more() {
        Map<String, BiFunction<Season, Long, Season>> more = new LinkedHashMap<>();
        more.put(
                "a rig like the first",
                (season, seed) -> withRig(season, season.rigs().get(0)));
        more.put(
                "another rig",
                (season, seed) -> withRig(
                        season, RandomSeasons.season(seed + 1_000_000).rigs().get(0)));
        more.put("larger nurse tanks", (season, seed) -> season.change()
                .rigs(season.rigs().stream()
                        .map(rig -> nurseTank(rig, rig.nurseTankL() * 4 / 3))
                        .toList())
                .season());
        more.put("longer hold times", (season, seed) -> season.change()
                .recipes(season.recipes().stream()
                        .map(recipe -> hold(recipe, recipe.holdS() / 3 * 4))
                        .toList())
                .season());
        more.put("more compost", (season, seed) -> season.change()
                .compost(season.compost().stream()
                        .map(lot -> new CompostLot(lot.id(), lot.massKg() * 4 / 3, lot.from()))
                        .toList())
                .season());
        return more;
    }

    /** It stands where the first rig does. */
    private static Season withRig(Season season, Rig like) {
        Rig added = WithDefaults.rig(
                "added",
                like.drumL(),
                like.batchCompostKg(),
                like.batchTimeS(),
                like.cleanTimeS(),
                like.nurseTankL(),
                like.transferLPerS(),
                like.roadSpeedMPerS(),
                like.payloadKg(),
                like.bucketKg(),
                like.extractAt(),
                season.rigs().get(0).at(),
                like.hours());
        return season.change()
                .rigs(Stream.concat(season.rigs().stream(), Stream.of(added)).toList())
                .season();
    }

    private static Rig nurseTank(Rig rig, double litres) {
        return WithDefaults.rig(
                rig.id(),
                rig.drumL(),
                rig.batchCompostKg(),
                rig.batchTimeS(),
                rig.cleanTimeS(),
                litres,
                rig.transferLPerS(),
                rig.roadSpeedMPerS(),
                rig.payloadKg(),
                rig.bucketKg(),
                rig.extractAt(),
                rig.at(),
                rig.hours());
    }

    private static Recipe hold(Recipe recipe, int holdS) {
        return WithDefaults.recipe(recipe.id(), recipe.mixLPerHa(), recipe.compostKgPerHa(), holdS);
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
