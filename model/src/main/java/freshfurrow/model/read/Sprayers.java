package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Swath;
import freshfurrow.model.season.WorkHours;
import java.util.List;
import java.util.Optional;

/** Sprayers, each from its keys. A figure that is wrong leaves the sprayer out. */
final class Sprayers {
    private static final Range RATE = Range.between(0.01, 2_800, "0.01 to 2,500 ac/h (0.004 to 1,000 ha/h)");
    private static final List<String> OF_THE_RIG = List.of("tank", "roadSpeed", "flush", "at", "hours");
    private static final List<String> BOOM = List.of("width", "speed", "fieldEfficiency");

    private Sprayers() {}

    static Optional<Sprayer> sprayer(String id, Keys keys, WorkHours seasonHours) {
        int before = keys.problems().count();
        Optional<? extends Swath> swath = swath(keys);
        if (keys.has("on")) {
            return mounted(id, keys, swath, seasonHours, before);
        }
        Optional<Double> tank = keys.quantity("tank", Kind.VOLUME, Machines.TANK);
        Optional<Double> leastFill = keys.number("leastFill", Machines.LEAST_FILL);
        Optional<Double> roadSpeed = keys.quantity("roadSpeed", Kind.SPEED, Machines.ROAD_SPEED);
        Optional<Double> fillSetup = keys.quantity("fillSetup", Kind.TIME, Machines.SHORT_TIME);
        Optional<Double> moveTime = keys.quantity("moveTime", Kind.TIME, Machines.SHORT_TIME);
        Optional<Double> flush = keys.optionalQuantity("flush", Kind.TIME, Machines.SHORT_TIME);
        Optional<String> at = keys.neededText("at", "yard");
        WorkHours hours = Times.hours(keys, seasonHours);
        WorkHours sprayHours = Times.hours(keys, "sprayHours", WorkHours.ALWAYS);
        keys.refuseOthers();
        if (keys.problems().count() > before) {
            return Optional.empty();
        }
        return Optional.of(new Sprayer(
                id,
                swath.orElseThrow(),
                tank.orElseThrow(),
                leastFill.orElse(Applicator.USUAL_LEAST_FILL),
                roadSpeed.orElseThrow(),
                Machines.seconds(fillSetup),
                Machines.seconds(moveTime),
                Machines.seconds(flush),
                at.orElseThrow(),
                hours,
                sprayHours));
    }

    /** Of what is its rig's it says nothing: {@link freshfurrow.model.season.Season} has it from the rig. */
    private static Optional<Sprayer> mounted(
            String id, Keys keys, Optional<? extends Swath> swath, WorkHours hours, int before) {
        Optional<String> on = keys.neededText("on", "R1");
        Optional<Double> leastFill = keys.number("leastFill", Machines.LEAST_FILL);
        Optional<Double> fillSetup = keys.quantity("fillSetup", Kind.TIME, Machines.WORK_TIME);
        Optional<Double> moveTime = keys.quantity("moveTime", Kind.TIME, Machines.SHORT_TIME);
        WorkHours sprayHours = Times.hours(keys, "sprayHours", WorkHours.ALWAYS);
        OF_THE_RIG.stream()
                .filter(keys::has)
                .forEach(key -> keys.problem(
                        key,
                        "is that of the rig that the sprayer is mounted on",
                        "leave it out, or leave out on if the sprayer is a machine of its own"));
        keys.refuseOthers();
        if (keys.problems().count() > before) {
            return Optional.empty();
        }
        return Optional.of(new Sprayer(
                id,
                swath.orElseThrow(),
                1,
                leastFill.orElse(Applicator.USUAL_LEAST_FILL),
                1,
                Machines.seconds(fillSetup),
                Machines.seconds(moveTime),
                0,
                "",
                hours,
                sprayHours,
                on));
    }

    /** A rate for a hose in somebody's hand, else the three figures of a boom. */
    private static Optional<? extends Swath> swath(Keys keys) {
        if (!keys.has("rate")) {
            return boom(keys);
        }
        BOOM.stream()
                .filter(keys::has)
                .forEach(key -> keys.problem(
                        key,
                        "stands beside rate",
                        "give width, speed and fieldEfficiency of a boom, or the rate of a hose"));
        return keys.quantity("rate", Kind.AREA_PER_TIME, RATE).map(Swath.Hose::new);
    }

    private static Optional<Swath.Boom> boom(Keys keys) {
        if (BOOM.stream().noneMatch(keys::has)) {
            keys.problem(
                    "rate",
                    "is missing, and so are width, speed and fieldEfficiency",
                    "write the rate of a hose, like rate: 2 ac/h, or the three figures of a boom");
            return Optional.empty();
        }
        Optional<Double> width = keys.quantity("width", Kind.LENGTH, Machines.WIDTH);
        Optional<Double> speed = keys.quantity("speed", Kind.SPEED, Machines.SPEED);
        Optional<Double> efficiency = Machines.fieldEfficiency(keys);
        return width.isPresent() && speed.isPresent() && efficiency.isPresent()
                ? Optional.of(new Swath.Boom(width.get(), speed.get(), efficiency.get()))
                : Optional.empty();
    }
}
