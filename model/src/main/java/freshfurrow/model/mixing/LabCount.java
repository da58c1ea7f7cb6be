package freshfurrow.model.mixing;

import static freshfurrow.model.quantity.Factors.G_PER_KG;
import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.model.season.Recipe;

/**
 * What a laboratory counted in a compost, and how much of it the extraction brings into the water.
 *
 * @param organismsPerGram counted in one gram of the compost as it is used, above 0
 * @param extractionShare share of them that ends up in the mix, above 0 to 1
 */
public record LabCount(double organismsPerGram, double extractionShare) {
    public LabCount {
        if (!(organismsPerGram > 0) || Double.isInfinite(organismsPerGram)) {
            throw new IllegalArgumentException("a count is above 0, not " + organismsPerGram);
        }
        if (!(extractionShare > 0 && extractionShare <= 1)) {
            throw new IllegalArgumentException("an extraction share is more than 0, up to 1, not " + extractionShare);
        }
    }

    /** Organisms that one gram of compost brings into the mix. */
    public double deliveredPerGram() {
        return organismsPerGram * extractionShare;
    }

    /** Organisms applied to one hectare. */
    public double perHa(Recipe recipe) {
        return deliveredPerGram() * G_PER_KG * recipe.compostKgPerHa();
    }

    /** Organisms applied to one square metre. */
    public double perM2(Recipe recipe) {
        return perHa(recipe) / M2_PER_HA;
    }

    /** Organisms in one litre of finished mix. */
    public double perLitre(Recipe recipe) {
        return perHa(recipe) / recipe.mixLPerHa();
    }
}
