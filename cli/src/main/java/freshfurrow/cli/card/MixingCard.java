package freshfurrow.cli.card;

import static freshfurrow.cli.text.Figures.toTheSecond;

import freshfurrow.app.season.LoadRoom;
import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.OneLoad;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** What goes into one load, how, and until when it is good. */
public final class MixingCard {
    private final Season season;
    private final MixingOrder order;
    private final CardUnits units;
    private final Applicator planter;
    private final Rig rig;
    private final Recipe recipe;
    private final OneLoad load;
    private final List<String> lines = new ArrayList<>();

    private MixingCard(Season season, MixingOrder order, OneLoad load) {
        this.season = season;
        this.order = order;
        this.load = load;
        units = new CardUnits(season.units());
        planter = season.applicators().get(order.planter());
        rig = season.rigs().get(order.rig());
        recipe = season.recipes().get(order.recipe());
    }

    /**
     * Why there can be no such load, and what would help, a line each; empty when there can.
     *
     * @param room of loads of that planter, rig and recipe
     */
    public static List<String> whyNot(Season season, MixingOrder order, LoadRoom room) {
        DrumStrength strength = strength(season, order);
        if (!strength.enough()) {
            return List.of(strength.refusal());
        }
        return new RoomText(season, order).lines(room);
    }

    /** The card, a line an entry, of a load that there can be: see {@link #whyNot}. */
    public static List<String> lines(Season season, MixingOrder order, LoadRoom room) {
        MixingCard card =
                new MixingCard(season, order, room.load(order.areaHa()).load());
        card.head();
        card.section(
                "Can this rig make it? Yes: its concentrate is at least as strong as the mix, so it can be diluted",
                strength(card.season, order).lines());
        card.section(
                "One load for " + card.units.show(Kind.AREA, card.load.areaHa()) + " (" + order.areaFrom() + ")",
                new LoadSums(card.load, card.planter, card.rig, card.recipe, order.bucketKg(), card.units).lines());
        card.section(
                "Batches", BatchTable.lines(card.load, card.units, order.bucketKg(), new DrumClock(order.start())));
        card.clock();
        order.count()
                .ifPresent(count -> card.section(
                        "Organisms, from a laboratory's count", CountSums.lines(count, card.recipe, card.units)));
        card.cautions();
        return card.lines;
    }

    private static DrumStrength strength(Season season, MixingOrder order) {
        return new DrumStrength(
                season.rigs().get(order.rig()), season.recipes().get(order.recipe()), new CardUnits(season.units()));
    }

    private void head() {
        lines.add("MIXING CARD   season " + season.name());
        lines.add("Recipe " + recipe.id() + ": " + units.show(Kind.VOLUME_PER_AREA, recipe.mixLPerHa()) + " of mix, "
                + units.show(Kind.MASS_PER_AREA, recipe.compostKgPerHa()) + " of compost, hold time "
                + toTheSecond(recipe.holdS()));
        lines.add("Rig " + rig.id() + ": drum " + volume(rig.drumL()) + ", full batch " + mass(rig.batchCompostKg())
                + " in " + toTheSecond(rig.batchTimeS()) + ", cleaning " + toTheSecond(rig.cleanTimeS()) + ". Planter "
                + planter.id() + ": tank " + volume(planter.tankL()));
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
                        .add("First batch done", clock.at(firstDone), clock.at(0) + " + " + toTheSecond(firstDone))
                        .add("Last batch done", clock.at(load.drumS()), clock.at(0) + " + " + toTheSecond(load.drumS()))
                        .add(
                                "In the tank",
                                clock.at(inTank),
                                clock.at(load.drumS()) + " + " + toTheSecond(load.transferS()))
                        .add("Planted", clock.at(planted), clock.at(inTank) + " + " + toTheSecond(load.plantS()))
                        .add(
                                "USE BY",
                                clock.at(load.useByS()),
                                clock.at(firstDone) + " + " + toTheSecond(recipe.holdS())
                                        + " of hold time, which runs from the end of the first batch")
                        .lines());
        lines.add("  Driving, breaks and queues are not included; `plan` works them in.");
    }

    private void cautions() {
        List<String> notes = new ArrayList<>();
        Cautions cautions = new Cautions(new Figures(units.units()));
        Stream.of(
                        new Hazard.Backflow(List.of()),
                        new Hazard.Lifting(order.bucketKg(), load.compostKg()),
                        new Hazard.DustAndMist(),
                        new Hazard.Pressure(),
                        new Hazard.OldMix(),
                        new Hazard.FoodCrop())
                .map(cautions::text)
                .forEach(notes::add);
        notes.add(Cautions.FIRST_WITH_SOURCES);
        section("Cautions", notes.stream().map(note -> "  " + note).toList());
    }

    private void section(String heading, List<String> content) {
        lines.addAll(Arrays.asList("", heading));
        lines.addAll(content);
    }

    private String volume(double litres) {
        return units.show(Kind.VOLUME, litres);
    }

    private String mass(double kilograms) {
        return units.show(Kind.MASS, kilograms);
    }
}
