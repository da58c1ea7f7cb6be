package freshfurrow.model.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How sure a plan is, where the season says how much times vary: shares of simulated seasons that begin as the plan does and follow its orders, with
 * the weather that the season file says.
 *
 * @param seasons how many were simulated, 1 or more
 * @param stale by load, in the plan's order: of the ground that it is for, the share of seasons in which the load that was to be planted there got too
 *     old, in part or in whole; loads for which that is 0 are left out
 * @param inWindow by crop, in the season's order: the share of seasons in which all that is left of it is planted within its window
 */
public record Chances(int seasons, Map<String, Double> stale, Map<String, Double> inWindow) {
    public Chances {
        stale = Collections.unmodifiableMap(new LinkedHashMap<>(stale));
        inWindow = Collections.unmodifiableMap(new LinkedHashMap<>(inWindow));
        if (seasons < 1 || !areShares(stale) || !areShares(inWindow)) {
            throw new IllegalArgumentException("chances are 0 to 1, of a season at least");
        }
    }

    private static boolean areShares(Map<String, Double> chances) {
        return chances.values().stream().allMatch(chance -> chance >= 0 && chance <= 1);
    }

    /** The chance that a load goes stale, 0 to 1. */
    public double stale(String load) {
        return stale.getOrDefault(load, 0.0);
    }
}
