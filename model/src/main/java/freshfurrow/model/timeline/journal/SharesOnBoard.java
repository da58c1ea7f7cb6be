package freshfurrow.model.timeline.journal;

import static freshfurrow.model.quantity.Factors.G_PER_KG;
import static freshfurrow.model.quantity.Factors.MG_PER_KG;

import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What each batch takes from which lot where rigs fetch compost: what was loaded first is used first. Loadings are whole grams; it is the sum
 * of all batches of a rig that is rounded to them.
 */
final class SharesOnBoard {
    private final List<OfRig> rigs = new ArrayList<>();

    SharesOnBoard(Season season) {
        season.rigs().forEach(rig -> {
            OfRig onBoard = new OfRig();
            season.standing()
                    .filter(standing -> standing.rigs().containsKey(rig.id()))
                    .ifPresent(standing -> standing.rigs()
                            .get(rig.id())
                            .compostKg()
                            .forEach((lot, kg) -> onBoard.add(lot, Math.round(kg * MG_PER_KG))));
            rigs.add(onBoard);
        });
    }

    void loaded(int rig, String lot, long mg) {
        rigs.get(rig).add(lot, mg);
    }

    /** Of the batch that a rig makes next, kg by lot. */
    Map<String, Double> next(int rig, long mg) {
        return rigs.get(rig).next(mg);
    }

    private record Loading(String lot, long fromMg, long untilMg) {}

    private static final class OfRig {
        private final List<Loading> loadings = new ArrayList<>();
        private long loadedMg;
        private long takenMg;

        void add(String lot, long mg) {
            loadings.add(new Loading(lot, loadedMg, loadedMg + mg));
            loadedMg += mg;
        }

        Map<String, Double> next(long mg) {
            Map<String, Double> kilograms = new LinkedHashMap<>();
            long untilMg = takenMg + mg;
            for (Loading loading : loadings) {
                long grams = LotShares.grams(Math.min(untilMg, loading.untilMg()))
                        - LotShares.grams(Math.max(takenMg, loading.fromMg()));
                if (grams > 0) {
                    kilograms.merge(loading.lot(), grams / G_PER_KG, Double::sum);
                }
            }
            takenMg = untilMg;
            return kilograms;
        }
    }
}
