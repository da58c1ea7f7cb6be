package freshfurrow.cli.card;

import static freshfurrow.cli.card.CardUnits.number;
import static freshfurrow.cli.text.Figures.toTheSecond;

import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.mixing.OutletFlow;
import freshfurrow.model.mixing.PressureLaw;
import freshfurrow.model.mixing.SmallPlot;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What the outlets of a planter or a boom are to give, how to catch it, and what to change when they give something else. */
public final class CalibrationCard {
    private static final double METRIC_DISTANCE_M = 100;
    private static final int SPEEDS_EACH_SIDE = 3;
    private static final String RATINGS =
            "Stay within the pressure ratings of the pump, hoses, couplings and outlets, also with an outlet closed.";
    private static final String WATER_FIRST = "Catch with water first. With extract, wear gloves and eye protection.";

    private final Season season;
    private final CalibrationOrder order;
    private final CardUnits units;
    private final Outlets outlets;
    private final Recipe recipe;
    private final OutletFlow row;
    private final OutletFlow all;
    private final List<String> lines = new ArrayList<>();

    private CalibrationCard(Season season, CalibrationOrder order) {
        this.season = season;
        this.order = order;
        units = CardUnits.ofOneSystem(season.units());
        outlets = order.outlets();
        recipe = season.recipes().get(order.recipe());
        row = new OutletFlow(recipe.mixLPerHa(), order.speedMPerS(), outlets.spacingM());
        all = new OutletFlow(recipe.mixLPerHa(), order.speedMPerS(), outlets.widthM());
    }

    /** The card, a line an entry. */
    public static List<String> lines(Season season, CalibrationOrder order) {
        CalibrationCard card = new CalibrationCard(season, order);
        card.head();
        card.flow();
        card.catching();
        card.speeds();
        card.pressure();
        order.caught()
                .ifPresent(caught -> card.section(
                        "Caught",
                        new CaughtSums(card.row, card.outlets, order.jarS(), order.pressureKPa(), caught, card.units)
                                .lines()));
        card.section(
                "Cautions",
                cautions(order.outlets()).stream().map(line -> "  " + line).toList());
        return card.lines;
    }

    private static List<String> cautions(Outlets outlets) {
        return outlets.isBoom()
                ? List.of(
                        "Keep everyone clear of a boom that could swing, fold or drop, and clear of power lines: set the brake, shut off"
                                + " the engine before you reach in.",
                        Cautions.PRESSURE,
                        RATINGS,
                        WATER_FIRST,
                        Cautions.SPRAYING,
                        Cautions.FIRST_WITH_SOURCES)
                : List.of(
                        "Keep everyone clear of a planter that could roll or drop: set the brake, block the planter, shut off the engine before"
                                + " you reach in.",
                        Cautions.PRESSURE,
                        RATINGS,
                        WATER_FIRST,
                        Cautions.FIRST_WITH_SOURCES);
    }

    private void head() {
        lines.add("CALIBRATION CARD   " + outlets.machine() + ", recipe " + recipe.id() + ", season " + season.name());
        lines.add(rate(recipe.mixLPerHa()) + " at " + speed(order.speedMPerS()) + ", "
                + units.show(Kind.LENGTH, outlets.widthM()) + " wide, " + outlets.many() + " " + spacing() + " apart: "
                + number(outlets.count()) + " " + outlets.many());
    }

    private void flow() {
        boolean us = units.us();
        String rateAndSpeed = rate(recipe.mixLPerHa()) + " x " + speed(order.speedMPerS()) + " x ";
        section(
                "Flow (for a liquid as thin as water)",
                new Sums()
                        .add(
                                "Each " + outlets.one(),
                                flow(row),
                                rateAndSpeed + spacing() + " / " + (us ? "5,940" : "60,000"))
                        .add(
                                "All " + outlets.many(),
                                flow(all),
                                flow(row) + " x " + number(outlets.count()) + " " + outlets.many())
                        .lines());
    }

    private void catching() {
        boolean us = units.us();
        double distanceM = us ? SmallPlot.distanceM(outlets.spacingM()) : METRIC_DISTANCE_M;
        double driveS = distanceM / order.speedMPerS();
        Sums sums = new Sums()
                .add(
                        "Jar, " + toTheSecond(order.jarS()),
                        caught(row.litresIn(order.jarS())),
                        flow(row) + " x " + order.jarS() + " s / 60 x " + (us ? "128 fl oz/gal" : "1,000 mL/L"));
        if (us) {
            sums.add(
                            "1/128 acre",
                            units.show(Kind.LENGTH, distanceM),
                            "43,560 sq ft / 128 / " + spacing() + " x 12 in/ft")
                    .given("  catch there", caught(row.litresOver(distanceM)), "ounces caught = gallons per acre");
        } else {
            sums.given("Over a distance", units.show(Kind.LENGTH, distanceM), "")
                    .add(
                            "  catch there",
                            caught(row.litresOver(distanceM)),
                            rate(recipe.mixLPerHa()) + " x " + units.show(Kind.LENGTH, distanceM) + " x " + spacing()
                                    + " / 1,000");
        }
        sums.add(
                "  driven in",
                number(driveS) + " s",
                units.show(Kind.LENGTH, distanceM) + " / (" + speed(order.speedMPerS())
                        + (us ? " x 1.467 ft/s/mph)" : " / 3.6)"));
        section("Catch from each " + outlets.one(), sums.lines());
    }

    private void speeds() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Speed",
                WorkWords.capital(outlets.one()) + " flow for " + rate(recipe.mixLPerHa()),
                "In " + toTheSecond(order.jarS()),
                "Rate if the flow stays the same"));
        double step = Kind.SPEED.toSi(units.us() ? 0.5 : 1, units.symbol(Kind.SPEED));
        for (int i = -SPEEDS_EACH_SIDE; i <= SPEEDS_EACH_SIDE; i++) {
            double speed = order.speedMPerS() + i * step;
            if (speed > step / 2) {
                OutletFlow there = new OutletFlow(recipe.mixLPerHa(), speed, outlets.spacingM());
                rows.add(List.of(
                        speed(speed),
                        flow(there),
                        caught(there.litresIn(order.jarS())),
                        rate(row.atSpeed(speed).rateLPerHa())));
            }
        }
        section(
                "At other speeds: the flow you need, and the rate you get if the flow stays the same",
                Columns.of(rows));
    }

    private void pressure() {
        if (order.pressureKPa().isEmpty() || order.otherLPerHa().isEmpty()) {
            return;
        }
        double now = order.pressureKPa().getAsDouble();
        double other = order.otherLPerHa().getAsDouble();
        String pressure = units.show(Kind.PRESSURE, now);
        section(
                "Pressure for another rate at the same speed, by the square-root law",
                new Sums()
                        .given("Now", pressure, "at " + rate(recipe.mixLPerHa()))
                        .add(
                                "For " + rate(other),
                                units.show(Kind.PRESSURE, PressureLaw.pressureFor(now, recipe.mixLPerHa(), other)),
                                pressure + " x (" + rate(other) + " / " + rate(recipe.mixLPerHa()) + ")^2")
                        .lines());
    }

    private void section(String heading, List<String> content) {
        lines.addAll(Arrays.asList("", heading));
        lines.addAll(content);
    }

    private String spacing() {
        return units.spacing(outlets.spacingM());
    }

    private String rate(double litresPerHa) {
        return units.show(Kind.VOLUME_PER_AREA, litresPerHa);
    }

    private String speed(double metresPerS) {
        return units.show(Kind.SPEED, metresPerS);
    }

    private String flow(OutletFlow flow) {
        return units.show(Kind.FLOW, flow.litresPerS());
    }

    private String caught(double litres) {
        return units.show(Kind.CAUGHT_VOLUME, litres);
    }
}
