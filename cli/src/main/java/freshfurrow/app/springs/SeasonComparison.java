package freshfurrow.app.springs;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Season;
import freshfurrow.solver.lived.Candidate;
import freshfurrow.solver.lived.SpringComparison;
import freshfurrow.solver.lived.SpringProgress;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Compares variants of a season over springs of its weather record, and writes what comes out. */
public final class SeasonComparison {
    static final String FILE_NAME = "compare.json";
    static final String PAGE_NAME = "compare.html";

    private static final String FOLDER = "compare";

    private SeasonComparison() {}

    /**
     * The comparison, once it is written. Blocks until all springs are lived.
     *
     * @param folder where it goes; without it, the folder {@code compare} beside the season file
     * @param force whether a comparison that is there may be replaced
     * @throws Refused when the season or a variant cannot be used, or the comparison cannot be written
     */
    public static Compared compare(
            ComparisonOrder order, Optional<Path> folder, boolean force, SpringProgress progress) {
        Path there = folder.orElseGet(
                () -> new GivenSeason(order.season(), List.of()).folder().resolve(FOLDER));
        return new ComparisonFiles(there, force).write(() -> of(order, progress));
    }

    /**
     * Slices of a comparison joined, once that is written.
     *
     * @param slices files, or folders that hold one; 1 or more
     * @param folder where it goes; without it, a folder {@code compare} in the one that the program runs in
     * @param force whether a comparison that is there may be replaced
     * @throws Refused when a slice cannot be read or does not go with the others, or the comparison cannot be written
     */
    public static Compared join(List<Path> slices, Optional<Path> folder, boolean force) {
        return new ComparisonFiles(folder.orElse(Path.of(FOLDER)), force).write(() -> Slices.join(slices));
    }

    /**
     * The comparison, not written. Blocks until all springs are lived.
     *
     * @throws Refused when the season or a variant cannot be used
     */
    public static ComparedSprings of(ComparisonOrder order, SpringProgress progress) {
        Reading.Valid base = new GivenSeason(order.season(), List.of()).read();
        List<Candidate> candidates = Variants.read(order.season(), base, order.variants(), order.reserves());
        SeasonSprings weather = SeasonSprings.of(base, order.seed());
        List<Integer> numbers = weather.those(order.springs());
        Season planned = base.season();
        LivingRules rules = new LivingRules(
                planned.name(),
                base.file(),
                planned.first(),
                planned.last(),
                planned.units(),
                base.costs().flatMap(costs -> costs.currency()),
                weather.about(),
                weather.recorded(),
                order.seed(),
                order.steps(),
                order.forecastDays(),
                order.replanDays(),
                candidates.stream()
                        .anyMatch(candidate ->
                                candidate.season().goals().untreatedDays().isPresent()),
                candidates.stream()
                        .anyMatch(candidate -> candidate.season().spread().isPresent()),
                candidates.stream()
                        .flatMap(candidate -> candidate.season().applicators().stream())
                        .map(Applicator::work)
                        .collect(Collectors.toSet()));
        return new SpringComparison(rules, weather, order.threads(), progress)
                .run(
                        candidates,
                        numbers,
                        weather.first(SpringComparison.SAMPLE),
                        weather.training(),
                        order.foresight());
    }
}
