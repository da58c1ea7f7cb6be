package freshfurrow.model.read;

import freshfurrow.model.read.FieldReader.FieldSource;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Crop;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The parts of a season that are right by themselves, with the keys they were read from; others are left out.
 *
 * @param placesKnown whether all ids of fields, places and water points could be read
 */
record Parts(
        Optional<LocalDate> first,
        Optional<LocalDate> last,
        ClosedDays closed,
        Map<String, Keys> cropKeys,
        Map<String, Crop> crops,
        List<Recipe> recipes,
        List<FieldSource> sources,
        List<Field> fields,
        Map<String, Keys> planterKeys,
        List<Applicator> planters,
        Map<String, Keys> rigKeys,
        List<Rig> rigs,
        Map<String, Keys> lotKeys,
        List<CompostLot> lots,
        boolean placesKnown) {

    /** The recipe of that id, where it is right. */
    Optional<Recipe> recipe(String id) {
        return recipes.stream().filter(recipe -> recipe.id().equals(id)).findFirst();
    }
}
