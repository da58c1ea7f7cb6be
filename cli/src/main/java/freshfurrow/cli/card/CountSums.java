package freshfurrow.cli.card;

import static freshfurrow.cli.card.CardUnits.count;
import static freshfurrow.cli.card.CardUnits.number;

import freshfurrow.model.mixing.LabCount;
import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Recipe;
import java.util.ArrayList;
import java.util.List;

/** Organisms that a recipe brings into the furrow, with the arithmetic. */
final class CountSums {
    private static final double HA_PER_ACRE = Kind.AREA.toSi(1, "ac");
    private static final double SQUARE_FEET_PER_ACRE = 43_560;

    private CountSums() {}

    static List<String> lines(LabCount count, Recipe recipe, CardUnits units) {
        boolean acres = units.units().area() == AreaUnit.ACRE;
        String area = units.symbol(Kind.AREA);
        double perArea = acres ? count.perHa(recipe) * HA_PER_ACRE : count.perHa(recipe);
        double perSmall = acres ? perArea / SQUARE_FEET_PER_ACRE : count.perM2(recipe);
        String massUnit = units.symbol(Kind.MASS);
        List<String> lines = new ArrayList<>(new Sums()
                .add(
                        "Delivered",
                        count(count.deliveredPerGram()) + " a gram",
                        count(count.organismsPerGram()) + " a gram x " + number(count.extractionShare())
                                + ", the share that extraction brings into the water")
                .add(
                        "Per " + area,
                        count(perArea),
                        units.show(Kind.MASS_PER_AREA, recipe.compostKgPerHa()) + " x "
                                + number(Kind.MASS.toSi(1, massUnit) * 1000) + " g/" + massUnit + " x "
                                + count(count.deliveredPerGram()) + " a gram")
                .add("Per litre of mix", count(count.perLitre(recipe)), count(perArea) + " / " + litres(recipe, units))
                .add(
                        acres ? "Per square foot" : "Per square metre",
                        count(perSmall),
                        count(perArea) + " / " + (acres ? "43,560 sq ft" : "10,000 m2"))
                .lines());
        lines.add(
                "  A count says what you apply, not what survives or whether it helps: evidence for an effect is mixed.");
        return lines;
    }

    /** Finished mix per area in litres. */
    private static String litres(Recipe recipe, CardUnits units) {
        String rate = units.show(Kind.VOLUME_PER_AREA, recipe.mixLPerHa());
        String unit = units.symbol(Kind.VOLUME);
        return unit.equals("L") ? rate : "(" + rate + " x " + number(Kind.VOLUME.toSi(1, unit)) + " L/" + unit + ")";
    }
}
