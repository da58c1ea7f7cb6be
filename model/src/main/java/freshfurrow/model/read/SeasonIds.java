package freshfurrow.model.read;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.PlaceIndex;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import java.util.List;
import java.util.stream.Stream;

/**
 * The ids of a season by what they stand for.
 *
 * @param places fields and water points among them
 */
record SeasonIds(
        List<String> fields,
        List<String> planters,
        List<String> rigs,
        List<String> waterPoints,
        List<String> lots,
        List<String> places) {
    static SeasonIds of(Season season) {
        return new SeasonIds(
                season.fields().stream().map(Field::id).toList(),
                season.applicators().stream().map(Applicator::id).toList(),
                season.rigs().stream().map(Rig::id).toList(),
                season.waterPoints().stream().map(WaterPoint::id).toList(),
                season.compost().stream().map(CompostLot::id).toList(),
                PlaceIndex.of(season).ids());
    }

    /** Planters and rigs. */
    List<String> machines() {
        return Stream.concat(planters.stream(), rigs.stream()).toList();
    }
}
