package freshfurrow.cli.card;

import static freshfurrow.cli.card.CardUnits.number;
import static freshfurrow.cli.card.CardUnits.time;

import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.mixing.Buckets;
import freshfurrow.model.mixing.Dilution;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.OneLoad;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What goes into one load, how, and until when it is good. */
public final class MixingCard {
    private final Season season;
    private final MixingOrder order;
    private final CardUnits units;
    private final Planter planter;
    private final Rig rig;
    private final Recipe recipe;
    private final OneLoad load;
    private final Dilution dilution;
    private final List<String> lines = new ArrayList<>();

    private MixingCard(CompiledSeason compiled, MixingOrder order) {
        this.season = compiled.season();
        this.order = order;
        units = new CardUnits(season.units());
        planter = season.planters().get(order.planter());
        rig = season.rigs().get(order.rig());
        recipe = season.recipes().get(order.recipe());
        load = OneLoad.forArea(compiled, order.planter(), order.rig(), order.recipe(), order.areaHa());
        dilution = new Dilution(
                load.batches().stream().mapToDouble(OneLoad.DrumBatch::waterL).sum(), load.mixL());
    }

    /**
     * The card, a line an entry.
     *
     * @throws IllegalArgumentException when the rig cannot make the recipe: see {@link DrumStrength}
     */
    public static List<String> lines(CompiledSeason season, MixingOrder order) {
        MixingCard card = new MixingCard(season, order);
        DrumStrength strength = new DrumStrength(card.rig, card.recipe, card.units);
        if (!strength.enough()) {
            throw new IllegalArgumentException(strength.refusal());
        }
        card.head();
        card.section("Can it be mixed? Yes: the drum's concentrate is no weaker than the mix", strength.lines());
        card.load();
        card.section(
                "Batches", BatchTable.lines(card.load, card.units, order.bucketKg(), new DrumClock(order.start())));
        card.clock();
        order.count()
                .ifPresent(count -> card.section(
                        "Organisms, as counted by a laboratory", CountSums.lines(count, card.recipe, card.units)));
        card.lookOut();
        return card.lines;
    }

    private void head() {
        lines.add("MIXING CARD   season " + season.name());
        lines.add("Recipe " + recipe.id() + ": " + units.show(Kind.VOLUME_PER_AREA, recipe.mixLPerHa()) + " of mix, "
                + units.show(Kind.MASS_PER_AREA, recipe.compostKgPerHa()) + " of compost, hold time "
                + time(recipe.holdS()));
        lines.add("Rig " + rig.id() + ": drum " + volume(rig.drumL()) + ", full batch " + mass(rig.batchCompostKg())
                + " in " + time(rig.batchTimeS()) + ", cleaning " + time(rig.cleanTimeS()) + ". Planter "
                + planter.id() + ": tank " + volume(planter.tankL()));
    }

    private void load() {
        Buckets buckets = Buckets.of(load.compostKg(), order.bucketKg());
        section(
                "One load for " + units.show(Kind.AREA, load.areaHa()) + " (" + order.areaFrom() + ")",
                new Sums()
                        .add(
                                "Mix",
                                volume(load.mixL()),
                                area() + " x " + units.show(Kind.VOLUME_PER_AREA, recipe.mixLPerHa()))
                        .add(
                                "Compost",
                                mass(load.compostKg()),
                                area() + " x " + units.show(Kind.MASS_PER_AREA, recipe.compostKgPerHa()))
                        .add(
                                "Batches",
                                Integer.toString(load.batches().size()),
                                mass(load.compostKg()) + " / " + mass(rig.batchCompostKg()) + ", rounded up")
                        .add(
                                "Buckets",
                                BatchTable.buckets(buckets, units),
                                mass(load.compostKg()) + " / " + mass(order.bucketKg())
                                        + " in a bucket; weigh one of yours")
                        .add(
                                "Concentrate",
                                volume(dilution.concentrateL()),
                                mass(load.compostKg()) + " x " + volume(rig.drumL()) + " / "
                                        + mass(rig.batchCompostKg()))
                        .add(
                                "Make-up water",
                                volume(dilution.makeUpL()),
                                volume(load.mixL()) + " - " + volume(dilution.concentrateL()))
                        .add(
                                "Dilution",
                                "1 to " + number(dilution.waterToOne()),
                                "1 part of concentrate to " + volume(dilution.makeUpL()) + " / "
                                        + volume(dilution.concentrateL()) + " of water")
                        .add("At the drum", time(load.drumS()), drumWork())
                        .add(
                                "Filling",
                                time(load.transferS()),
                                time(planter.fillSetupS()) + " setup + " + volume(load.mixL()) + " / "
                                        + units.show(Kind.FLOW, rig.transferLPerS()))
                        .add(
                                "Planting",
                                time(load.plantS()),
                                area() + " / "
                                        + number(units.figure(Kind.AREA, planter.fieldCapacityM2PerS() * 3600 / 10_000))
                                        + " " + units.symbol(Kind.AREA) + "/h")
                        .lines());
    }

    private String drumWork() {
        int last = load.batches().get(load.batches().size() - 1).durationS();
        int before = load.batches().size() - 1;
        if (before == 0) {
            return "1 batch; then " + time(load.cleanS()) + " of cleaning";
        }
        return before + " x (" + time(rig.batchTimeS()) + " + " + time(rig.cleanTimeS()) + " of cleaning) + "
                + time(last) + "; then " + time(load.cleanS()) + " of cleaning";
    }

    private void clock() {
        DrumClock clock = new DrumClock(order.start());
        int firstDone = load.batches().get(0).durationS();
        int inTank = load.drumS() + load.transferS();
        int planted = inTank + load.plantS();
        section(
                order.start().isPresent()
                        ? "Clock, first batch at " + clock.at(0)
                        : "Clock, from the start of the first batch (give --start for times of day)",
                new Sums()
                        .add("First batch done", clock.at(firstDone), clock.at(0) + " + " + time(firstDone))
                        .add("Drum done", clock.at(load.drumS()), clock.at(0) + " + " + time(load.drumS()))
                        .add("In the tank", clock.at(inTank), clock.at(load.drumS()) + " + " + time(load.transferS()))
                        .add("Planted", clock.at(planted), clock.at(inTank) + " + " + time(load.plantS()))
                        .add(
                                "USE BY",
                                clock.at(load.useByS()),
                                clock.at(firstDone) + " + " + time(recipe.holdS())
                                        + " of hold time, which runs from the end of the first batch")
                        .lines());
        lines.add("  No roads, breaks or queues are in these times; `plan` plays them out.");
    }

    private void lookOut() {
        List<String> notes = new ArrayList<>();
        int planted = load.drumS() + load.transferS() + load.plantS();
        if (planted > load.useByS()) {
            notes.add("Too large a load: the last of it is in the ground " + time(planted - load.useByS())
                    + " after its hold time is over.");
        }
        if (tooMuch(load.mixL(), planter.tankL())) {
            notes.add("More than " + planter.id() + "'s tank of " + volume(planter.tankL()) + " takes at once.");
        }
        if (tooMuch(load.mixL(), rig.nurseTankL())) {
            notes.add("More water than " + rig.id() + "'s nurse tank of " + volume(rig.nurseTankL()) + " carries.");
        }
        Cautions cautions = new Cautions(new Figures(units.units()));
        Stream.of(
                        new Hazard.Backflow(List.of()),
                        new Hazard.Lifting(OptionalDouble.of(order.bucketKg()), load.compostKg()),
                        new Hazard.DustAndMist(),
                        new Hazard.Pressure(),
                        new Hazard.OldMix(),
                        new Hazard.FoodCrop())
                .map(cautions::text)
                .forEach(notes::add);
        notes.add(Cautions.FIRST);
        section("Look out", notes.stream().map(note -> "  " + note).toList());
    }

    private static boolean tooMuch(double wantedL, double thereL) {
        return wantedL > thereL * (1 + 1e-6);
    }

    private void section(String heading, List<String> content) {
        lines.addAll(Arrays.asList("", heading));
        lines.addAll(content);
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
