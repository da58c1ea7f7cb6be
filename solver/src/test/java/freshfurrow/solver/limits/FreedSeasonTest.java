package freshfurrow.solver.limits;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class FreedSeasonTest {
    @Property(tries = 10)
    void whateverIsFreeTheRecordKeepsEveryRuleOfTheFreedSeason(
            @ForAll @LongRange(min = 1, max = 1000) long seed, @ForAll Resource free) {
        Season season = InventedSeason.of(20, 2, 2, 12_000, seed);
        CompiledSeason compiled = CompiledSeason.of(season);
        Season freed = FreedSeason.of(season, free, compiled.roads());

        Plan plan = record(CompiledSeason.of(freed), lists(compiled));

        assertThat(Audit.check(freed, plan)).isEmpty();
    }

    @Property(tries = 10)
    void noRainMoreOrLessChangesNothingInASeasonWithoutRain(@ForAll @LongRange(min = 1, max = 1000) long seed) {
        Season rainy = InventedSeason.hurried(12, 2, seed);
        Season dry = FreedSeason.of(rainy, Resource.WEATHER, rainy.distances());
        CompiledSeason compiled = CompiledSeason.of(dry);
        Plan plan = record(compiled, lists(compiled));

        Plan.Limit weather = new SeasonLimits(compiled, 1, 1, StopSignal.untilTold())
                .of(plan, 0).orElseThrow().stream()
                        .filter(limit -> limit.resource() == Resource.WEATHER)
                        .findFirst()
                        .orElseThrow();

        assertThat(weather.lateHaDays()).isEqualTo(plan.totals().lateHaDays());
        assertThat(weather.unservedHa()).isEqualTo(plan.totals().unservedHa());
        assertThat(weather.waitMin()).isEqualTo(plan.totals().waitMin());
        assertThat(weather.shareOfLate()).isZero();
        assertThat(weather.shareOfWait()).isZero();
    }

    @Test
    void onlyFreeWeatherDriesTheGroundOfARecord() {
        Season season = InventedSeason.of(3, 1, 1, 12_000, 1);
        Season wet = season.inSpring(new GroundRecord(
                "a record", Map.of(), Map.of(Drainage.POOR, List.of(new WetDay(season.first(), 31, 30, 0)))));

        assertThat(FreedSeason.of(wet, Resource.WEATHER, wet.distances()).ground())
                .isEmpty();
        assertThat(FreedSeason.of(wet, Resource.RIG, wet.distances()).ground()).isEqualTo(wet.ground());
    }

    private static List<List<String>> lists(CompiledSeason season) {
        FieldLists lists = FirstLists.best(season);
        return lists.byPlanter().stream()
                .map(list -> list.stream()
                        .map(field -> season.season().fields().get(field).id())
                        .toList())
                .toList();
    }

    private static Plan record(CompiledSeason season, List<List<String>> lists) {
        return PlanRecorder.record(
                season,
                lists,
                new Plan.SeasonSource(
                        season.season().name(),
                        "s.yaml",
                        "0".repeat(64),
                        season.season().units()));
    }
}
