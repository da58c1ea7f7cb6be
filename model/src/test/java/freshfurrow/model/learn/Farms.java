package freshfurrow.model.learn;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The invented seasons that come with the program, without their rain, and simple plans of them. */
final class Farms {
    private Farms() {}

    static Season season(String name) {
        Reading reading = SeasonFiles.read(Path.of("..", "scenarios", name), List.of());
        return ((Reading.Valid) reading)
                .season()
                .change()
                .rain(List.of())
                .ground(Optional.empty())
                .spread(Optional.of(TimeSpread.USUAL))
                .season();
    }

    /** The fields in the order in which their windows close, each to the machine for its work that has been given the fewest. */
    static Plan plan(Season season) {
        List<List<String>> lists = new ArrayList<>();
        season.applicators().forEach(machine -> lists.add(new ArrayList<>()));
        season.fields().stream()
                .sorted(Comparator.comparing(field -> field.window().last()))
                .forEach(field -> lists.get(chosen(season, lists, field)).add(field.id()));
        return PlanRecorder.record(CompiledSeason.of(season), lists, SeasonSource.of(season, "season.yaml", ""));
    }

    private static int chosen(Season season, List<List<String>> lists, Field field) {
        return IntStream.range(0, lists.size())
                .filter(i -> field.allows(season.applicators().get(i)))
                .boxed()
                .min(Comparator.comparingInt(i -> lists.get(i).size()))
                .orElseThrow();
    }
}
