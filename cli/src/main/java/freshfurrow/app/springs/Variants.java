package freshfurrow.app.springs;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.refusal.SpringsRefusal;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import freshfurrow.solver.lived.Candidate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A season and its variants, read for a comparison. */
final class Variants {
    private Variants() {}

    /**
     * The season as {@code base}, then each variant by the names of its patches.
     *
     * @param file of the season
     * @param patches for each variant, merge patches that are applied in order
     * @throws Refused when a variant cannot be used, or cannot live through the same springs as the season
     */
    static List<Candidate> read(Path file, Reading.Valid base, List<List<Path>> patches) {
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(candidate("base", base));
        for (List<Path> variant : patches) {
            candidates.add(candidate(name(variant), new GivenSeason(file, variant).read()));
        }
        refuseOtherDates(candidates);
        return candidates;
    }

    private static Candidate candidate(String name, Reading.Valid read) {
        return new Candidate(name, read.season(), read.costs(), read.sha256());
    }

    private static String name(List<Path> patches) {
        return String.join(
                "+",
                patches.stream()
                        .map(path -> String.valueOf(path.getFileName()).replaceFirst("\\.(ya?ml|json)$", ""))
                        .toList());
    }

    private static void refuseOtherDates(List<Candidate> candidates) {
        Season base = candidates.get(0).season();
        for (Candidate candidate : candidates) {
            if (!candidate.season().first().equals(base.first())
                    || !candidate.season().last().equals(base.last())) {
                throw new Refused(new SpringsRefusal.OtherDates(candidate.name()));
            }
        }
    }
}
