package freshfurrow.app.springs;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.refusal.SpringsRefusal;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import freshfurrow.solver.lived.Candidate;
import java.nio.file.Path;
import java.time.Duration;
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
     * @param reserves to try, after those, for the first of them whose times vary
     * @throws Refused when a variant cannot be used, or cannot live through the same springs as the season
     */
    static List<Candidate> read(Path file, Reading.Valid base, List<List<Path>> patches, List<Duration> reserves) {
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(candidate("base", base));
        for (List<Path> variant : patches) {
            candidates.add(candidate(name(variant), new GivenSeason(file, variant).read()));
        }
        if (!reserves.isEmpty()) {
            Candidate varying = candidates.stream()
                    .filter(candidate -> candidate.season().spread().isPresent())
                    .findFirst()
                    .orElseThrow(() -> new Refused(new SpringsRefusal.TimesDoNotVary(base.file())));
            for (Duration reserve : reserves) {
                candidates.add(varying.withReserve("reserve " + minutes(reserve), (int) reserve.toSeconds()));
            }
        }
        refuseOtherDates(candidates);
        return candidates;
    }

    private static String minutes(Duration reserve) {
        return reserve.toSeconds() % MINUTE_S == 0 ? reserve.toMinutes() + " min" : reserve.toSeconds() + " s";
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
