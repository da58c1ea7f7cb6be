package freshfurrow.cli.text;

import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.safety.Lift;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.season.ClockChanges;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Hazards in words, as reminders. They are no instructions: those are the makers' and the law's. */
public record Cautions(Figures figures) {
    /** What stands before all others. */
    public static final String FIRST =
            "Local codes, makers' manuals and licensed practice come first. See docs/safety.md.";

    /** What is said of {@link Hazard.Pressure}. */
    public static final String PRESSURE =
            "Pumps and hoses: stop the pump and let the pressure off before you open a coupling. Guards stay on.";

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final double CM_PER_INCH = 2.54;

    /** One sentence or a few on a hazard. */
    public String text(Hazard hazard) {
        if (hazard instanceof Hazard.LoadedRig rig) {
            return loaded(rig);
        }
        if (hazard instanceof Hazard.PartFilledTank tank) {
            return "On the road: part-filled on the drives at " + clocks(tank.starts())
                    + ". A part-filled tank surges and can tip the vehicle below the posted speed. Know your loaded weight.";
        }
        if (hazard instanceof Hazard.OnTheRoad) {
            return "On the road: a loaded tank is slow to stop and easy to tip. Know your loaded weight and width.";
        }
        if (hazard instanceof Hazard.Backflow backflow) {
            return "Drawing"
                    + (backflow.waterPoints().isEmpty() ? "" : " at " + String.join(", ", backflow.waterPoints()))
                    + ": keep an open air gap between hose and tank, so that nothing can run back into the source;"
                    + " where a hose must be coupled, a tested backflow preventer.";
        }
        if (hazard instanceof Hazard.Lifting lifting) {
            return lifting(lifting);
        }
        if (hazard instanceof Hazard.DustAndMist) {
            return "Dust and mist carry microbes: mask, gloves and eye protection, and wash before you eat.";
        }
        if (hazard instanceof Hazard.Pressure) {
            return PRESSURE;
        }
        if (hazard instanceof Hazard.OldMix) {
            return "Old mix: do not plant it past its use-by. Heat ages it faster: shade the tanks. On hot days people"
                    + " need water, rest and shade too.";
        }
        if (hazard instanceof Hazard.ClockChange clocks) {
            return text(clocks.change());
        }
        if (hazard instanceof Hazard.FoodCrop) {
            return "Food crops: rules may bind what is applied and when (in the United States 21 CFR part 112). Ask first.";
        }
        throw new IllegalArgumentException("no words for " + hazard);
    }

    /** What a change of clocks means for those who work by them. */
    static String text(ClockChanges.Change change) {
        return "Clocks go " + (change.back() ? "back" : "forward") + " on "
                + Figures.day(change.at().toLocalDate()) + " at " + CLOCK.format(change.at()) + ", to "
                + CLOCK.format(change.then())
                + ": use-by times are by the clock as it then shows. Check the time twice.";
    }

    private String loaded(Hazard.LoadedRig rig) {
        String sum = figures.volume(rig.waterL()) + " weigh " + figures.mass(rig.waterKg())
                + (rig.compostKg() > 0
                        ? ", with the day's compost " + figures.mass(rig.compostKg()) + " more: "
                                + figures.mass(rig.loadKg())
                        : "");
        if (rig.isOverLimit()) {
            return "TOO HEAVY: " + rig.rig() + " is "
                    + figures.mass(rig.loadKg() - rig.payloadKg().orElse(0)) + " over its payload of "
                    + figures.mass(rig.payloadKg().orElse(0)) + ": " + sum
                    + ". Tanks, drum, pump, fuel and people come on top. Do not drive it so.";
        }
        return "Weight of " + rig.rig() + ": " + sum
                + rig.payloadKg().stream()
                        .mapToObj(payload -> ", of a payload of " + figures.mass(payload))
                        .findFirst()
                        .orElse("; its payload is not given")
                + ". Tanks, drum, pump, fuel and people come on top: weigh it.";
    }

    private String lifting(Hazard.Lifting lifting) {
        String lightly = " Lift small portions close to the body, or two to a lift.";
        if (lifting.bucketKg().isEmpty()) {
            return "Compost: wet compost is heavier than it looks." + lightly;
        }
        double bucketKg = lifting.bucketKg().getAsDouble();
        String bucket = "a full bucket of " + figures.mass(bucketKg);
        String limit = (inPounds() ? "51 lb" : "23 kg") + " (NIOSH 94-110)";
        return lifting.isOverLimit()
                ? "TOO HEAVY TO LIFT: " + bucket + " is over the recommended limit for the best of lifts, " + limit
                        + ". Fill buckets less, or use a hoist or a loader."
                : "Compost: the recommended limit is " + limit
                        + " for the best of lifts and less for any other: " + bucket
                        + " is over it with the hands more than "
                        + reach(Lift.farthestReachCm(bucketKg)) + " from the ankles, or sooner." + lightly;
    }

    private String reach(double cm) {
        return inPounds()
                ? String.format(Locale.ROOT, "%.0f in", Math.floor(cm / CM_PER_INCH))
                : String.format(Locale.ROOT, "%.0f cm", Math.floor(cm));
    }

    private boolean inPounds() {
        return figures.units().mass() == MassUnit.POUND;
    }

    private static String clocks(List<LocalDateTime> times) {
        return times.stream().map(CLOCK::format).collect(Collectors.joining(", "));
    }
}
