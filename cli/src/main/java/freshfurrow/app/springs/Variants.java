package freshfurrow.app.springs;

import freshfurrow.cli.command.Refusal;
import freshfurrow.cli.command.SeasonArgument;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import freshfurrow.solver.lived.Candidate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A season and its variants, read for a comparison. */
public final class Variants {
    private Variants() {}

    /**
     * The season as {@code base}, then each variant by the names of its patches.
     *
     * @param file of the season
     * @param patches for each variant, merge patches with commas between
     * @throws Refusal when a variant cannot live through the same springs as the season
     */
    public static List<Candidate> read(Path file, Reading.Valid base, List<String> patches) {
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(candidate("base", base));
        for (String variant : patches) {
            List<Path> paths = Stream.of(variant.split(",", -1)).map(Path::of).toList();
            candidates.add(candidate(name(paths), SeasonArgument.valid(SeasonFiles.read(file, paths))));
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
                throw new Refusal(
                        "variant " + candidate.name() + " has other first and last days than the season, so"
                                + " that they cannot live through the same springs; leave season.first and season.last as they are");
            }
        }
    }
}
