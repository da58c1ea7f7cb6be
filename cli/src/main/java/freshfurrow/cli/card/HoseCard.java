package freshfurrow.cli.card;

import static freshfurrow.cli.card.CardUnits.number;
import static freshfurrow.cli.card.CardUnits.signedPercent;
import static freshfurrow.cli.text.Figures.toTheSecond;
import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.cli.text.Cautions;
import freshfurrow.model.mixing.HoseFlow;
import freshfurrow.model.mixing.SmallPlot;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a hose in somebody's hand is to give, how to catch it and time an area, and what to change when it gives something else. */
public final class HoseCard {
    /** 100 m2, where areas are metric. */
    private static final double METRIC_PLOT_M2 = 100;

    private static final double FOOT_M = 0.3048;

    private static final List<String> CAUTIONS = List.of(
            Cautions.PRESSURE,
            "Stay within the pressure ratings of the pump, hose, couplings and nozzle, also with the nozzle closed.",
            "Catch with water first. With extract, wear gloves and eye protection.",
            Cautions.SPRAYING,
            Cautions.FIRST_WITH_SOURCES);

    private final HoseOrder order;
    private final CardUnits units;
    private final Recipe recipe;
    private final String season;
    private final double flowLPerS;
    private final double plotM2;
    private final List<String> lines = new ArrayList<>();

    private HoseCard(Season season, HoseOrder order) {
        this.season = season.name();
        this.order = order;
        units = CardUnits.ofOneSystem(season.units());
        recipe = season.recipes().get(order.recipe());
        flowLPerS = HoseFlow.litresPerS(recipe.mixLPerHa(), order.m2PerS());
        plotM2 = units.us() ? SmallPlot.AREA_M2 : METRIC_PLOT_M2;
    }

    /** The card, a line an entry. */
    public static List<String> lines(Season season, HoseOrder order) {
        HoseCard card = new HoseCard(season, order);
        card.head();
        card.section("Flow (for a liquid as thin as water)", card.flow().lines());
        card.section("Time an area", card.plot().lines());
        if (order.caughtL().isPresent() || order.area().isPresent()) {
            card.section("Measured", card.measured().lines());
        }
        card.section("Cautions", CAUTIONS.stream().map(line -> "  " + line).toList());
        return card.lines;
    }

    private void head() {
        lines.add("CALIBRATION CARD   sprayer " + order.sprayer() + ", recipe " + recipe.id() + ", season " + season);
        lines.add(rate(recipe.mixLPerHa()) + " by a hose at " + covers(order.m2PerS()));
    }

    private Sums flow() {
        return new Sums()
                .add("Hose", flow(flowLPerS), rate(recipe.mixLPerHa()) + " x " + covers(order.m2PerS()) + " / 60 min/h")
                .add(
                        "Catch, " + toTheSecond(order.catchS()),
                        volume(flowLPerS * order.catchS()),
                        flow(flowLPerS) + " x " + order.catchS() + " s / 60");
    }

    private Sums plot() {
        double plotS = plotM2 / order.m2PerS();
        String seconds = number(plotS) + " s";
        Sums sums = new Sums();
        if (units.us()) {
            sums.add("1/128 acre", number(plotM2 / (FOOT_M * FOOT_M)) + " sq ft", "43,560 sq ft / 128");
            sums.add("  sprayed in", seconds, "1/128 ac x 3,600 s/h / " + covers(order.m2PerS()));
            return sums.given("  catch in that time", caught(flowLPerS * plotS), "ounces caught = gallons per acre");
        }
        sums.given("A plot", number(plotM2) + " m2", "10 m x 10 m");
        sums.add("  sprayed in", seconds, "0.01 ha x 3,600 s/h / " + covers(order.m2PerS()));
        return sums.add(
                "  catch in that time",
                caught(flowLPerS * plotS),
                rate(recipe.mixLPerHa()) + " x 0.01 ha x 1,000 mL/L");
    }

    private Sums measured() {
        Sums sums = new Sums();
        double flow = order.caughtL().isPresent() ? order.caughtL().getAsDouble() / order.catchS() : flowLPerS;
        double m2PerS = order.area().map(HoseOrder.Timed::m2PerS).orElse(order.m2PerS());
        order.caughtL()
                .ifPresent(litres -> sums.add(
                        "Flow", flow(flow), volume(litres) + " in " + toTheSecond(order.catchS()) + " x 60 s/min"));
        order.area()
                .ifPresent(area -> sums.add(
                        "Covered", covers(m2PerS), area(area.m2()) + " in " + number(area.s()) + " s x 3,600 s/h"));
        double rate = HoseFlow.rateLPerHa(flow, m2PerS);
        double right = HoseFlow.m2PerSFor(flow, recipe.mixLPerHa());
        return sums.add("Rate", rate(rate), flow(flow) + " x 60 min/h / " + covers(m2PerS))
                .add(
                        "Error",
                        signedPercent(rate / recipe.mixLPerHa() - 1),
                        rate(rate) + " / " + rate(recipe.mixLPerHa()) + " - 1")
                .add(
                        "Cover instead",
                        covers(right),
                        covers(m2PerS) + " x " + rate(rate) + " / " + rate(recipe.mixLPerHa()))
                .add(
                        units.us() ? "  1/128 acre in" : "  100 m2 in",
                        number(plotM2 / right) + " s",
                        (units.us() ? "1/128 ac" : "0.01 ha") + " x 3,600 s/h / " + covers(right));
    }

    private void section(String heading, List<String> content) {
        lines.addAll(Arrays.asList("", heading));
        lines.addAll(content);
    }

    private String rate(double litresPerHa) {
        return units.show(Kind.VOLUME_PER_AREA, litresPerHa);
    }

    private String covers(double m2PerS) {
        return units.show(Kind.AREA_PER_TIME, m2PerS);
    }

    private String area(double m2) {
        return units.show(Kind.AREA, m2 / M2_PER_HA);
    }

    private String flow(double litresPerS) {
        return units.show(Kind.FLOW, litresPerS);
    }

    private String volume(double litres) {
        return units.show(Kind.VOLUME, litres);
    }

    private String caught(double litres) {
        return units.show(Kind.CAUGHT_VOLUME, litres);
    }
}
