package freshfurrow.model.mixing;

import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;

/**
 * Concentrate from the drum, thinned with water to the finished mix. Water that stays in the compost is not looked at.
 *
 * @param concentrateL L, above 0
 * @param mixL L, above 0
 */
public record Dilution(double concentrateL, double mixL) {
    /** So little too much concentrate (share of the mix) comes from the rounding of units. */
    private static final double ROUNDING = 1e-6;

    public Dilution {
        if (!(concentrateL > 0 && mixL > 0)) {
            throw new IllegalArgumentException(
                    "a dilution needs volumes above 0: " + concentrateL + " L in " + mixL + " L");
        }
    }

    /** For one hectare: drum water x compost rate / compost of a full batch, in the mix rate. */
    public static Dilution ofHectare(Rig rig, Recipe recipe) {
        return new Dilution(rig.drumL() * recipe.compostKgPerHa() / rig.batchCompostKg(), recipe.mixLPerHa());
    }

    /** Whether the concentrate is at least as strong as the mix is to be; else the drum's water alone is more than the mix. */
    public boolean possible() {
        return concentrateL <= mixL * (1 + ROUNDING);
    }

    /** Water to add, L; 0 where the mix is the concentrate itself or cannot be made. */
    public double makeUpL() {
        return Math.max(0, mixL - concentrateL);
    }

    /** Parts of water to one part of concentrate, 0 or more. */
    public double waterToOne() {
        return makeUpL() / concentrateL;
    }
}
