package freshfurrow.model.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.progress.News;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Rain, breakdowns and what was done before a plan, changed by hand in its file. */
class StartChecksumTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path FILE = Path.of("plan.json");

    @Property(tries = 20)
    void noFigureOfAStartIsChangedUnseenAndNothingIsTakenOut(@ForAll long seed) throws Exception {
        ObjectNode plan = (ObjectNode) JSON.readTree(PlanFile.toJson(replanned(seed)));
        JsonNode start = plan.get("start");
        for (ContainerNode<?> place : places((ContainerNode<?>) start)) {
            for (int i = 0; i < place.size(); i++) {
                JsonNode before = child(place, i);
                if (before.isNumber()) {
                    put(
                            place,
                            i,
                            JsonNodeFactory.instance.numberNode(
                                    before.isInt() ? before.intValue() + 1 : before.doubleValue() + 0.5));
                    assertRefused(plan);
                    put(place, i, before);
                } else if (before.isArray() && !before.isEmpty()) {
                    put(place, i, JsonNodeFactory.instance.arrayNode());
                    assertRefused(plan);
                    put(place, i, before);
                }
            }
        }
    }

    @Property(tries = 20)
    void aStartWrittenBeforeThereWasAChecksumIsReadAsItIs(@ForAll long seed) throws Exception {
        ObjectNode plan = (ObjectNode) JSON.readTree(PlanFile.toJson(replanned(seed)));
        ((ObjectNode) plan.get("start")).remove("sha256");

        assertThat(PlanFile.fromJson(FILE, plan.toString()))
                .isEqualTo(PlanFile.fromJson(FILE, PlanFile.toJson(replanned(seed))));
    }

    private static void assertRefused(ObjectNode plan) {
        assertThatThrownBy(() -> PlanFile.fromJson(FILE, plan.toString())).isInstanceOf(PlanFileException.class);
    }

    private static List<ContainerNode<?>> places(ContainerNode<?> top) {
        List<ContainerNode<?>> places = new ArrayList<>(List.of(top));
        top.forEach(child -> {
            if (child instanceof ContainerNode<?> container) {
                places.addAll(places(container));
            }
        });
        return places;
    }

    private static JsonNode child(ContainerNode<?> place, int i) {
        return place instanceof ArrayNode list ? list.get(i) : place.get(key(place, i));
    }

    private static void put(ContainerNode<?> place, int i, JsonNode value) {
        if (place instanceof ArrayNode list) {
            list.set(i, value);
        } else {
            ((ObjectNode) place).set(key(place, i), value);
        }
    }

    private static String key(ContainerNode<?> place, int i) {
        List<String> keys = new ArrayList<>();
        place.fieldNames().forEachRemaining(keys::add);
        return keys.get(i);
    }

    /** A plan of what is left on the third day, after rain and with a breakdown. */
    private static Plan replanned(long seed) {
        Season whole = RandomSeasons.season(seed);
        List<List<String>> lists = RandomSeasons.lists(whole, seed);
        Plan plan = PlanRecorder.record(CompiledSeason.of(whole), lists, SeasonSource.of(whole, "season.yaml", "00"));
        LocalDateTime now = whole.first().plusDays(2).atTime(11, 0);
        News news = new News(
                List.of(new Rain(whole.first().plusDays(2), 36_000, 5)),
                List.of(new Outage(whole.rigs().get(0).id(), now, now.plusHours(30))),
                Set.of());
        PlanStart start =
                SoFar.of(whole, plan, now, news, SeasonLog.EMPTY, false).start();
        Season left = start.remaining(whole);
        List<List<String>> rest = lists.stream()
                .map(list -> list.stream().filter(left::hasField).toList())
                .toList();
        return PlanRecorder.record(CompiledSeason.of(left), rest, plan.season(), start);
    }
}
