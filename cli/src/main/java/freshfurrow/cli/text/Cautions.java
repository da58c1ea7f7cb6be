package freshfurrow.cli.text;

import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.safety.Lift;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.season.ClockChanges;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;

/** Hazards in words, as reminders. They are not instructions: those are the manufacturers' and the law's. */
public record Cautions(Figures figures) {
    /** What stands before all others. */
    public static final String FIRST = "Local codes, manufacturers' manuals and licensed professionals come first.";

    /** The same where the documents are at hand, which they are not on paper in a cab. */
    public static final String FIRST_WITH_SOURCES = FIRST + " See docs/safety.md.";

    /** What is said of {@link Hazard.Pressure}. */
    public static final String PRESSURE =
            "Pumps and hoses: stop the pump and release the pressure before you open a coupling. Keep guards in place.";

    /** What is said of {@link Hazard.Spraying}. */
    public static final String SPRAYING =
            "Spraying: labels, the law and local rules say in what wind you may spray, what to wear and when people and animals may"
                    + " come back. Stop if mist drifts toward people, animals, water, hives or other crops.";

    private static final double CM_PER_INCH = 2.54;

    /** One sentence or a few on a hazard. */
    public String text(Hazard hazard) {
        if (hazard instanceof Hazard.LoadedRig rig) {
            return loaded(rig);
        }
        if (hazard instanceof Hazard.PartFilledTank tank) {
            return "On the road: the tank is part full on the " + clocks(tank.starts())
                    + (tank.starts().size() == 1 ? " drive" : " drives")
                    + ". Liquid surges in a part-full tank and can roll a vehicle even below the posted speed."
                    + " Slow down for curves.";
        }
        if (hazard instanceof Hazard.OnTheRoad) {
            return "On the road: a loaded rig is slow to stop and rolls over easily. Know its loaded weight and width.";
        }
        if (hazard instanceof Hazard.Backflow backflow) {
            return "Drawing"
                    + (backflow.waterPoints().isEmpty() ? "" : " at " + String.join(", ", backflow.waterPoints()))
                    + ": keep an open air gap between hose and tank, so that nothing can run back into the source;"
                    + " if the hose has to be connected, use a tested backflow preventer.";
        }
        if (hazard instanceof Hazard.Lifting lifting) {
            return lifting(lifting);
        }
        if (hazard instanceof Hazard.DustAndMist) {
            return "Dust and mist carry microbes: wear a mask, gloves and eye protection, and wash before you eat.";
        }
        if (hazard instanceof Hazard.Pressure) {
            return PRESSURE;
        }
        if (hazard instanceof Hazard.Spraying) {
            return SPRAYING;
        }
        if (hazard instanceof Hazard.OldMix) {
            return "Old mix: do not apply it after its use-by time. Heat ages it faster: shade the tanks. On hot days"
                    + " people need water, rest and shade too.";
        }
        if (hazard instanceof Hazard.ClockChange clocks) {
            return text(clocks.change());
        }
        if (hazard instanceof Hazard.FoodCrop) {
            return "Food crops: rules may limit what you apply and when (in the United States, 21 CFR part 112). Ask before"
                    + " you apply.";
        }
        throw new IllegalArgumentException("no words for " + hazard);
    }

    /** What a change of clocks means for those who work by them. */
    public String text(ClockChanges.Change change) {
        return "Clocks go " + (change.back() ? "back" : "forward") + " on "
                + Figures.day(change.at().toLocalDate()) + " at " + figures.clock(change.at()) + ", to "
                + figures.clock(change.then())
                + ": use-by times after that are in the new time. Check the time twice.";
    }

    private String loaded(Hazard.LoadedRig rig) {
        String sum = figures.volume(rig.waterL()) + " of water weighs " + figures.mass(rig.waterKg())
                + (rig.compostKg() > 0
                        ? ", the day's compost " + figures.mass(rig.compostKg()) + ", together "
                                + figures.mass(rig.loadKg())
                        : "");
        if (rig.isOverLimit()) {
            return "TOO HEAVY: " + rig.rig() + " is "
                    + figures.mass(rig.loadKg() - rig.payloadKg().orElse(0)) + " over its payload of "
                    + figures.mass(rig.payloadKg().orElse(0)) + ": " + sum
                    + ". Tanks, drum, pump, fuel and people are extra. Do not drive it like this.";
        }
        return "Weight of " + rig.rig() + ": " + sum
                + rig.payloadKg().stream()
                        .mapToObj(payload -> "; its payload is " + figures.mass(payload))
                        .findFirst()
                        .orElse("; its payload is not given")
                + ". Tanks, drum, pump, fuel and people are extra: weigh the loaded rig.";
    }

    private String lifting(Hazard.Lifting lifting) {
        if (lifting.bucketKg().isEmpty()) {
            return "Compost: wet compost is heavier than it looks. Weigh a full bucket before you lift by the bucket. Lift small"
                    + " amounts close to your body, or lift with two people.";
        }
        double bucketKg = lifting.bucketKg().getAsDouble();
        String bucket = figures.mass(bucketKg) + " bucket";
        String limit = inPounds() ? "51 lb" : "23 kg";
        return lifting.isOverLimit()
                ? "TOO HEAVY TO LIFT: a full " + bucket + " is over the recommended limit for an ideal lift, " + limit
                        + " (NIOSH 94-110). Fill buckets less, or use a hoist or a loader."
                : "Compost: " + limit
                        + " is the recommended limit for an ideal lift (NIOSH 94-110), less for any other."
                        + " Hold a full " + bucket + " within " + reach(Lift.farthestReachCm(bucketKg))
                        + " of your ankles, closer if you bend or twist."
                        + (Lift.farthestReachCm(bucketKg) < Lift.FARTHEST_CM
                                ? " Fill buckets half, or lift with two people."
                                : "");
    }

    private String reach(double cm) {
        return inPounds()
                ? String.format(Locale.ROOT, "%.0f in", Math.floor(cm / CM_PER_INCH))
                : String.format(Locale.ROOT, "%.0f cm", Math.floor(cm));
    }

    private boolean inPounds() {
        return figures.units().mass() == MassUnit.POUND;
    }

    private String clocks(List<LocalDateTime> times) {
        List<String> clocks = times.stream()
                .map(time -> figures.crewClock(time.toLocalDate()).about(time))
                .toList();
        int last = clocks.size() - 1;
        return last < 1
                ? String.join("", clocks)
                : String.join(", ", clocks.subList(0, last)) + " and " + clocks.get(last);
    }
}
