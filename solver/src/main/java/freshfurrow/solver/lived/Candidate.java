package freshfurrow.solver.lived;

import freshfurrow.model.compare.TriedReserve;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.util.Optional;

/**
 * A season to be compared with others.
 *
 * @param name as people know it
 * @param sha256 of all files it was read from, lower-case hex
 * @param reserve that is tried, in place of those of the files
 */
public record Candidate(
        String name, Season season, Optional<Costs> costs, String sha256, Optional<TriedReserve> reserve) {
    /** A season that was read as it is. */
    public Candidate(String name, Season season, Optional<Costs> costs, String sha256) {
        this(name, season, costs, sha256, Optional.empty());
    }

    /** The same with another reserve for all its recipes. */
    public Candidate withReserve(String itsName, int reserveS) {
        Season other = season.change()
                .recipes(season.recipes().stream()
                        .map(recipe -> recipe.withReserveS(reserveS))
                        .toList())
                .season();
        double kg = season.fields().stream()
                .mapToDouble(
                        field -> field.areaHa() * season.recipe(field.recipe()).compostKgPerHa())
                .sum();
        double ha = season.fields().stream().mapToDouble(Field::areaHa).sum();
        return new Candidate(itsName, other, costs, sha256, Optional.of(new TriedReserve(reserveS, kg / ha)));
    }
}
