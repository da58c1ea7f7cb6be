package freshfurrow.cli.card;

import static freshfurrow.cli.card.CardUnits.number;
import static freshfurrow.cli.card.CardUnits.signedPercent;

import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.mixing.OutletFlow;
import freshfurrow.model.mixing.PressureLaw;
import freshfurrow.model.mixing.RowSpread;
import freshfurrow.model.quantity.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What a catch says: the rate it makes, the error, how to correct it, and how even the rows are. */
final class CaughtSums {
    /** Common practice, no source. */
    private static final double UNEVEN = 0.05;

    private final OutletFlow wanted;
    private final Outlets outlets;
    private final OptionalDouble pressureKPa;
    private final RowSpread rows;
    private final CardUnits units;
    private final double wantedL;
    private final OutletFlow measured;

    CaughtSums(
            OutletFlow wanted,
            Outlets outlets,
            int jarS,
            OptionalDouble pressureKPa,
            CalibrationOrder.Caught caught,
            CardUnits units) {
        this.outlets = outlets;
        this.wanted = wanted;
        this.pressureKPa = pressureKPa;
        this.units = units;
        rows = new RowSpread(caught.litres());
        double distanceM = caught.distanceM().orElse(jarS * wanted.speedMPerS());
        wantedL = wanted.litresOver(distanceM);
        measured = OutletFlow.ofCatch(rows.meanL(), distanceM, wanted.speedMPerS(), wanted.widthM());
    }

    List<String> lines() {
        String mean = caught(rows.meanL());
        String ratio = mean + " / " + caught(wantedL);
        List<String> lines = new ArrayList<>(new Sums()
                .given("Wanted", caught(wantedL), "")
                .add(
                        "Caught",
                        mean,
                        rows.litres().size() == 1
                                ? "one " + outlets.one()
                                : "average of " + rows.litres().size() + " " + outlets.many())
                .add("Rate", rate(measured.rateLPerHa()), rate(wanted.rateLPerHa()) + " x " + ratio)
                .add("Error", signedPercent(measured.rateLPerHa() / wanted.rateLPerHa() - 1), ratio + " - 1")
                .add(
                        "New speed",
                        speed(measured.speedFor(wanted.rateLPerHa())),
                        speed(wanted.speedMPerS()) + " x " + ratio + ", with the same flow")
                .add(
                        "or pressure",
                        newPressure(),
                        oldPressure() + " x (" + caught(wantedL) + " / " + mean + ")^2, at the same speed")
                .lines());
        if (rows.litres().size() > 1) {
            spread(lines);
        }
        return lines;
    }

    private void spread(List<String> lines) {
        List<List<String>> table = new ArrayList<>();
        table.add(List.of(WorkWords.capital(outlets.one()), "Caught", "Off the average", ""));
        for (int row = 0; row < rows.litres().size(); row++) {
            double off = rows.deviation(row);
            table.add(List.of(
                    Integer.toString(row + 1),
                    caught(rows.litres().get(row)),
                    signedPercent(off),
                    Math.abs(off) > UNEVEN ? "check this " + outlets.one() : ""));
        }
        lines.add("");
        lines.add(WorkWords.capital(outlets.many())
                + ", marked if more than 5 % off the average (common practice, no source)");
        lines.addAll(Columns.of(table));
        lines.addAll(new Sums()
                .add(
                        "Spread",
                        number(rows.coefficientOfVariation() * 100) + " %",
                        "standard deviation "
                                + caught(rows.standardDeviationL()) + " / average " + caught(rows.meanL())
                                + " (coefficient of variation)")
                .lines());
    }

    private String newPressure() {
        double times = PressureLaw.pressureFor(1, measured.rateLPerHa(), wanted.rateLPerHa());
        return pressureKPa.isPresent()
                ? units.show(Kind.PRESSURE, pressureKPa.getAsDouble() * times)
                : number(times) + " times";
    }

    private String oldPressure() {
        return pressureKPa.isPresent() ? units.show(Kind.PRESSURE, pressureKPa.getAsDouble()) : "1";
    }

    private String caught(double litres) {
        return units.show(Kind.CAUGHT_VOLUME, litres);
    }

    private String rate(double litresPerHa) {
        return units.show(Kind.VOLUME_PER_AREA, litresPerHa);
    }

    private String speed(double metresPerS) {
        return units.show(Kind.SPEED, metresPerS);
    }
}
