package freshfurrow.model.progress;

import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import java.util.List;
import java.util.Set;

/**
 * What became known since a plan was made and stands in no log.
 *
 * @param spoiledLots ids of lots of compost that are of no use any more
 */
public record News(List<Rain> rain, List<Outage> outages, Set<String> spoiledLots) {
    public News {
        rain = List.copyOf(rain);
        outages = List.copyOf(outages);
        spoiledLots = Set.copyOf(spoiledLots);
    }
}
