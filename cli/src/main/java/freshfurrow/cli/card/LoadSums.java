package freshfurrow.cli.card;

import static freshfurrow.cli.card.CardUnits.number;
import static freshfurrow.cli.text.Figures.toTheSecond;
import static freshfurrow.model.quantity.Factors.HOUR_S;
import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.model.mixing.Buckets;
import freshfurrow.model.mixing.Dilution;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.OneLoad;
import java.util.List;
import java.util.OptionalDouble;

/** What goes into a load and how long it takes, with the arithmetic. */
record LoadSums(OneLoad load, Applicator planter, Rig rig, Recipe recipe, OptionalDouble bucketKg, CardUnits units) {
    List<String> lines() {
        Sums sums = new Sums();
        amounts(sums);
        water(sums);
        times(sums);
        return sums.lines();
    }

    private void amounts(Sums sums) {
        sums.add("Mix", volume(load.mixL()), area() + " x " + units.show(Kind.VOLUME_PER_AREA, recipe.mixLPerHa()));
        sums.add(
                "Compost",
                mass(load.compostKg()),
                area() + " x " + units.show(Kind.MASS_PER_AREA, recipe.compostKgPerHa()));
        sums.add(
                "Batches",
                Integer.toString(load.batches().size()),
                mass(load.compostKg()) + " / " + mass(rig.batchCompostKg()) + ", rounded up");
        bucketKg.ifPresentOrElse(
                kg -> sums.given(
                        "Buckets",
                        BatchTable.buckets(Buckets.of(load.compostKg(), kg), units),
                        "(" + mass(kg) + " a bucket)"),
                () -> sums.given(
                        "Buckets",
                        "not known",
                        "(weigh a full one, take off the empty one, and give the rest with --bucket or as the rig's `bucket`)"));
    }

    private void water(Sums sums) {
        Dilution dilution = new Dilution(
                load.batches().stream().mapToDouble(OneLoad.DrumBatch::waterL).sum(), load.mixL());
        String concentrate = volume(dilution.concentrateL());
        String makeUp = volume(dilution.makeUpL());
        sums.add(
                "Concentrate",
                concentrate,
                mass(load.compostKg()) + " x " + volume(rig.drumL()) + " / " + mass(rig.batchCompostKg()));
        sums.add("Make-up water", makeUp, volume(load.mixL()) + " - " + concentrate);
        sums.given(
                "Dilution",
                "1 to " + number(dilution.waterToOne()),
                "1 part concentrate to " + number(dilution.waterToOne()) + " parts water (" + concentrate + " + "
                        + makeUp + ")");
    }

    private void times(Sums sums) {
        sums.add("Extracting", toTheSecond(load.drumS()), drumWork());
        sums.add(
                "Filling",
                toTheSecond(load.transferS()),
                toTheSecond(planter.fillSetupS()) + " setup + " + volume(load.mixL()) + " / "
                        + units.show(Kind.FLOW, rig.transferLPerS()));
        double haPerHour = planter.fieldCapacityM2PerS() * HOUR_S / M2_PER_HA;
        sums.add("Planting", toTheSecond(load.plantS()), area() + " / " + units.show(Kind.AREA, haPerHour) + "/h");
    }

    private String drumWork() {
        String each = toTheSecond(load.batches().get(0).durationS());
        int before = load.batches().size() - 1;
        String cleaning = "; then " + toTheSecond(load.cleanS()) + " of cleaning";
        if (before == 0) {
            return "1 batch" + cleaning;
        }
        return before + " x (" + each + " + " + toTheSecond(rig.cleanTimeS()) + " of cleaning) + " + each + cleaning;
    }

    private String area() {
        return units.show(Kind.AREA, load.areaHa());
    }

    private String volume(double litres) {
        return units.show(Kind.VOLUME, litres);
    }

    private String mass(double kilograms) {
        return units.show(Kind.MASS, kilograms);
    }
}
