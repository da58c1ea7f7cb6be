package freshfurrow.cli.card;

import static freshfurrow.cli.card.CardUnits.number;

import freshfurrow.model.mixing.Dilution;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import java.util.List;

/** Whether a rig's concentrate is strong enough for a recipe, with the arithmetic. */
record DrumStrength(Rig rig, Recipe recipe, CardUnits units) {
    boolean enough() {
        return Dilution.ofHectare(rig, recipe).possible();
    }

    List<String> lines() {
        return new Sums()
                .add("Concentrate", strength(rig.batchCompostKg() / rig.drumL()), drum())
                .add("Mix", strength(recipe.compostKgPerHa() / recipe.mixLPerHa()), mix())
                .lines();
    }

    /** Why not, and what would help, in one sentence. */
    String refusal() {
        double needed = recipe.compostKgPerHa() / recipe.mixLPerHa();
        return rig.id() + " cannot make " + recipe.id() + ": its concentrate has " + drum() + " = "
                + strength(rig.batchCompostKg() / rig.drumL()) + ", but the mix needs " + mix() + " = "
                + strength(needed)
                + "; put at least " + units.show(Kind.MASS, rig.drumL() * needed)
                + " of compost in a batch, or at most " + units.show(Kind.VOLUME, rig.batchCompostKg() / needed)
                + " of water in the drum";
    }

    private String drum() {
        return units.show(Kind.MASS, rig.batchCompostKg()) + " / " + units.show(Kind.VOLUME, rig.drumL());
    }

    private String mix() {
        return units.show(Kind.MASS_PER_AREA, recipe.compostKgPerHa()) + " / "
                + units.show(Kind.VOLUME_PER_AREA, recipe.mixLPerHa());
    }

    private String strength(double kgPerL) {
        return number(units.figure(Kind.MASS, kgPerL) / units.figure(Kind.VOLUME, 1)) + " " + units.symbol(Kind.MASS)
                + "/" + units.symbol(Kind.VOLUME);
    }
}
