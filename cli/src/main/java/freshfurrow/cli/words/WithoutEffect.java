package freshfurrow.cli.words;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Keys about planting without extract that change nothing in their season, as another one is missing. */
final class WithoutEffect {
    private WithoutEffect() {}

    /** A sentence each. */
    static List<String> of(Season season) {
        List<String> sentences = new ArrayList<>();
        boolean plants = season.fields().stream().anyMatch(field -> field.work() == Work.PLANT);
        if (season.goals().untreatedDays().isEmpty()) {
            joined(season.applicators().stream()
                            .filter(planter -> planter.longestWaitS().isPresent())
                            .map(Applicator::id))
                    .ifPresent(
                            ids -> sentences.add(
                                    ids
                                            + ": `longestWait` has no effect, as nothing is planted without extract unless `goals.untreated` is given."));
            joined(weighted(season, Work.PLANT))
                    .ifPresent(
                            crops -> sentences.add(
                                    crops
                                            + ": `extractWeight` has no effect, as nothing is planted without extract unless `goals.untreated` is given."));
        } else if (!plants) {
            sentences.add(
                    "`goals.untreated` has no effect: all fields are sprayed, and nothing is sprayed without extract.");
        }
        joined(weighted(season, Work.SPRAY))
                .ifPresent(crops -> sentences.add(
                        crops + ": `extractWeight` has no effect, as nothing is sprayed without extract."));
        return sentences;
    }

    private static Stream<String> weighted(Season season, Work work) {
        return season.fields().stream()
                .filter(field -> field.work() == work && field.extractWeight() != 1)
                .map(Field::crop)
                .distinct();
    }

    private static Optional<String> joined(Stream<String> ids) {
        String all = ids.collect(Collectors.joining(", "));
        return all.isEmpty() ? Optional.empty() : Optional.of(all);
    }
}
