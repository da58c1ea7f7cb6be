package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One plan carried out in one spring after another by people who know the weather so far and no more than a forecast of the rest.
 * From one piece of news to the next the timeline plays what is known; then it is seen where the machines stand, each planter's fields
 * are put in the order for now, and it is played on.
 */
public final class SpringLife {
    private static final Plan.SeasonSource SOURCE =
            new Plan.SeasonSource("lived", "", "0".repeat(64), DisplayUnits.METRIC);

    private final Season season;
    private final CompiledSeason compiled;
    private final PlantingOrders orders;
    private final Map<String, Field> fields;
    private final int forecastDays;
    private final Optional<Replanning> replanning;

    /**
     * A life by a plan.
     *
     * @param compiled the whole season; its own weather is not looked at
     * @param orders in the season's order of planters
     * @param forecastDays days known ahead, today among them; 0 to know only what is
     * @param replanning empty to keep to the plan
     */
    public SpringLife(
            CompiledSeason compiled, PlantingOrders orders, int forecastDays, Optional<Replanning> replanning) {
        this.season = compiled.season().change().distances(compiled.roads()).season();
        this.compiled = compiled;
        this.forecastDays = forecastDays;
        this.replanning = replanning;
        this.orders = orders;
        fields = season.fields().stream().collect(Collectors.toMap(Field::id, field -> field));
    }

    /** Lives through the spring of a number. Safe for several threads at once. */
    LivedSpring live(SpringSource springs, int number) {
        return live(springs.spring(number), springs.times(number));
    }

    /**
     * Lives through a spring. Safe for several threads at once.
     *
     * @param times by which number its times are drawn, where they vary
     */
    LivedSpring live(GroundRecord spring, long times) {
        KnownGround ground = new KnownGround(season, new GroundDays(season, spring), forecastDays);
        PassOver passOver = new PassOver(season, ground);
        SpringTally tally = new SpringTally(compiled);
        List<LivedSpring.Part> parts = new ArrayList<>();
        int end = season.days() * DAY_S;
        int now = 0;
        Optional<PlanStart> start = Optional.empty();
        PlantingOrders order = orders;
        while (true) {
            Season known =
                    start.map(from -> from.remaining(season)).orElse(season).inSpring(ground.at(now));
            List<Field> left = known.fields();
            int news = ground.nextNews(now);
            if (replanning.isPresent()) {
                news = Math.min(news, replanning.get().nextAfter(now));
                order = replanning.get().isDue(now) && !left.isEmpty()
                        ? replanning.get().orders(known, order)
                        : order;
            }
            List<List<Field>> planned = left(order, left);
            List<List<Field>> taken = inOrder(planned, passOver, start, now);
            if (!taken.equals(planned)) {
                // else a field that opens is no news: none is passed over
                news = Math.min(news, passOver.nextOpening(left, now));
            }
            if (left.isEmpty() || news > end) {
                news = end;
            }
            Plan played = PlanRecorder.recordAsItTurnsOutUntil(
                    CompiledSeason.of(known), order.with(ids(taken)), SOURCE, start, news, times);
            parts.add(new LivedSpring.Part(known, played, now, news));
            PlanStart done = StandingAt.of(known, played, time(news));
            tally.add(played, news, done);
            if (news >= end) {
                return new LivedSpring(tally.figures(done), tally.waterL(), tally.overtimeH(), parts, done);
            }
            start = Optional.of(done);
            now = news;
        }
    }

    private List<List<Field>> left(PlantingOrders order, List<Field> left) {
        Set<String> ids = left.stream().map(Field::id).collect(Collectors.toSet());
        return order.byPlanter().stream()
                .map(list ->
                        list.stream().filter(ids::contains).map(fields::get).toList())
                .toList();
    }

    /** The lists of fields left in the order for now. */
    private static List<List<Field>> inOrder(
            List<List<Field>> lists, PassOver passOver, Optional<PlanStart> start, int now) {
        Set<String> begun = start.map(from -> from.plantedHa().keySet()).orElse(Set.of());
        return lists.stream().map(list -> passOver.order(list, begun, now)).toList();
    }

    private static List<List<String>> ids(List<List<Field>> lists) {
        return lists.stream().map(list -> list.stream().map(Field::id).toList()).toList();
    }

    private LocalDateTime time(int s) {
        return season.time().at(s);
    }
}
