package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;

import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.tables.Leeway;

/**
 * How much area a load can serve at the most. It fits the planter's tank and its hold time ({@link
 * CompiledSeason#mostOfALoadDm2}) and, as its water or mix comes on one rig, the nurse tank of a rig; the {@link Leeway} comes
 * to either.
 */
public final class LargestLoads {
    /** The timeline counts whole mL. */
    private static final double ROUNDING_L = 0.001;

    /** A load may lack so much of its compost, however small it is. */
    private static final double GRAM_KG = 0.001_001;

    private static final double MOST_OF_EXACT = 1 + Leeway.SHARE;

    /** Of the water that a load's area asks for, the share that it is not made without. */
    public static final double LEAST_SHARE = 1 / MOST_OF_EXACT;

    private final CompiledSeason season;

    public LargestLoads(CompiledSeason season) {
        this.season = season;
    }

    /** Of one load, dm2, above 0. */
    public double dm2(int planter, int recipe) {
        double nurse = 0;
        for (Rig rig : season.season().rigs()) {
            nurse = Math.max(nurse, (rig.nurseTankL() + ROUNDING_L) / mixLPerDm2(recipe));
        }
        return Math.min((double) season.mostOfALoadDm2(planter, recipe), nurse * MOST_OF_EXACT);
    }

    /** Finished mix, L/dm2. */
    public double mixLPerDm2(int recipe) {
        return season.season().recipes().get(recipe).mixLPerHa() / DM2_PER_HA;
    }

    /**
     * Of the compost that a load's area asks for, the share that it is not made without where something is left to make it of: all, but
     * where rigs fetch compost a thousandth, for the sake of which none is fetched, or the gram by which a load may be more than a rig holds.
     */
    public double leastShareOfCompost() {
        if (!season.fetchesCompost()) {
            return 1;
        }
        double leastHoldsKg = season.season().rigs().stream()
                .mapToDouble(Rig::mostCompostKg)
                .min()
                .orElse(1);
        return leastHoldsKg > 0 ? Math.min(LEAST_SHARE, leastHoldsKg / (leastHoldsKg + GRAM_KG)) : 0;
    }

    /** How often a lot may be used up: once, or once by each rig that fetches compost. */
    public int timesUsedUp() {
        return season.fetchesCompost() ? season.season().rigs().size() : 1;
    }

    /** Compost, mg/dm2. */
    public double compostMgPerDm2(int recipe) {
        return season.season().recipes().get(recipe).compostKgPerHa();
    }
}
