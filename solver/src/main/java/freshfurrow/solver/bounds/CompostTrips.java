package freshfurrow.solver.bounds;

import static freshfurrow.model.quantity.Factors.MG_PER_KG;

import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.relaxation.FieldGroups;
import freshfurrow.solver.relaxation.LargestLoads;
import java.util.stream.IntStream;

/**
 * Loadings of compost that no plan can go below, where rigs fetch it.
 *
 * <p>Proof. All that is planted with extract takes its compost, but for the {@link LargestLoads#leastShareOfCompost} and what loads lack that use up a lot. What is not in mix or on board when the season
 * begins to be played out is loaded, and no loading is more than a rig may have on board.
 */
final class CompostTrips {
    /** A load that uses up what there is may lack ten grams, rounded to the gram. */
    private static final double LACKING_MG = 11_000;

    private static final double ROUNDING = 1e-6;

    private final CompiledSeason season;
    private final LargestLoads largest;

    CompostTrips(CompiledSeason season) {
        this.season = season;
        largest = new LargestLoads(season);
    }

    /** @param withoutDm2 left unplanted or without extract, or planted out of mix that was on board, at the most */
    int fewest(double withoutDm2) {
        double mostKg = season.season().rigs().stream()
                .mapToDouble(Rig::mostCompostKg)
                .max()
                .orElse(0);
        if (!season.fetchesCompost() || mostKg <= 0) {
            return 0;
        }
        double loadedMg = neededMg(withoutDm2) - onBoardMg() - lackingMg();
        return (int) Math.max(0, Math.ceil(loadedMg / (mostKg * MG_PER_KG) - ROUNDING));
    }

    private double neededMg(double withoutDm2) {
        double mg = 0;
        double mostPerDm2 = 0;
        for (int field = 0; field < season.fieldCount(); field++) {
            if (!FieldGroups.planters(season, field).isEmpty()) {
                double perDm2 = largest.leastShareOfCompost() * largest.compostMgPerDm2(season.recipeIndex(field));
                mg += perDm2 * season.areaDm2(field);
                mostPerDm2 = Math.max(mostPerDm2, perDm2);
            }
        }
        return mg - withoutDm2 * mostPerDm2;
    }

    private double onBoardMg() {
        return IntStream.range(0, season.season().rigs().size())
                .mapToDouble(season::rigCompostMg)
                .sum();
    }

    /** Of each lot and of what each rig has on board to begin with. */
    private double lackingMg() {
        int times = season.season().compost().size() * largest.timesUsedUp()
                + season.season().rigs().size();
        return times * LACKING_MG;
    }
}
