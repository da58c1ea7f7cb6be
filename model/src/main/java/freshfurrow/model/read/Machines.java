package freshfurrow.model.read;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Planters, rigs, water points, compost lots and recipes, each from its keys. A figure that is wrong leaves the thing out. */
final class Machines {
    static final Range TANK = Range.between(1, 200_000, "0.3 to 50,000 gal (1 to 200,000 L)");
    static final Range ROAD_SPEED = Range.between(0.4, 40, "1 to 80 mph (1.5 to 140 km/h)");
    static final Range SHORT_TIME = Range.from0(DAY_S, "0 to 24 h");
    static final Range WIDTH = Range.between(0.1, 61, "0.4 to 200 ft (0.1 to 61 m)");
    static final Range SPEED = Range.between(0.1, 10, "0.3 to 22 mph (0.4 to 36 km/h)");
    static final Range LEAST_FILL = new Range(0, 1, "a share from 0 to 1, like 0.1", "0.1");
    private static final Range OVERTIME = Range.from0(DAY_S / 4, "0 to 6 h");
    static final Range WORK_TIME = Range.between(1, DAY_S, "1 s to 24 h");
    private static final Range FLOW = Range.between(0.01, 1_000, "0.2 to 15,000 gal/min (0.01 to 1,000 L/s)");
    private static final Range COMPOST = Range.between(0.1, 10_000_000, "0.3 lb (0.1 kg) to 10,000 t");
    private static final Range WEIGHT = Range.from0(10_000_000, "0 to 10,000 t");
    private static final Range LOADING = Range.between(0.001, 100, "0.0005 to 45 min/lb (0.001 to 100 min/kg)");
    private static final Range BUCKET = Range.between(0.5, 100, "1.2 to 220 lb (0.5 to 100 kg)");

    private Machines() {}

    static Optional<Planter> planter(String id, Keys keys, WorkHours seasonHours) {
        int before = keys.problems().count();
        Optional<Double> width = keys.quantity("width", Kind.LENGTH, WIDTH);
        Optional<Double> spacing =
                keys.quantity("rowSpacing", Kind.LENGTH, Range.between(0.05, 5, "2 in to 16 ft (0.05 to 5 m)"));
        Optional<Double> speed = keys.quantity("speed", Kind.SPEED, SPEED);
        Optional<Double> efficiency = fieldEfficiency(keys);
        Optional<Double> tank = keys.quantity("tank", Kind.VOLUME, TANK);
        Optional<Double> leastFill = keys.number("leastFill", LEAST_FILL);
        Optional<Double> roadSpeed = keys.quantity("roadSpeed", Kind.SPEED, ROAD_SPEED);
        Optional<Double> fillSetup = keys.quantity("fillSetup", Kind.TIME, SHORT_TIME);
        Optional<Double> moveTime = keys.quantity("moveTime", Kind.TIME, SHORT_TIME);
        Optional<Double> overtime = keys.optionalQuantity("overtime", Kind.TIME, OVERTIME);
        Optional<Double> flush = keys.optionalQuantity("flush", Kind.TIME, SHORT_TIME);
        Optional<Double> longestWait = keys.optionalQuantity("longestWait", Kind.TIME, SHORT_TIME);
        Optional<String> at = keys.neededText("at", "yard");
        WorkHours hours = Times.hours(keys, seasonHours);
        keys.refuseOthers();
        if (width.isPresent() && spacing.isPresent() && spacing.get() > width.get()) {
            keys.problem("rowSpacing", "rows are farther apart than the planter is wide", "check width and rowSpacing");
        }
        if (keys.problems().count() > before) {
            return Optional.empty();
        }
        return Optional.of(new Planter(
                id,
                width.orElseThrow(),
                spacing.orElseThrow(),
                speed.orElseThrow(),
                efficiency.orElseThrow(),
                tank.orElseThrow(),
                leastFill.orElse(Planter.USUAL_LEAST_FILL),
                roadSpeed.orElseThrow(),
                seconds(fillSetup),
                seconds(moveTime),
                seconds(overtime),
                seconds(flush),
                longestWait.isPresent() ? OptionalInt.of(seconds(longestWait)) : OptionalInt.empty(),
                at.orElseThrow(),
                hours));
    }

    static Optional<Double> fieldEfficiency(Keys keys) {
        keys.needed("fieldEfficiency", "write a share from 0.01 to 1, like fieldEfficiency: 0.65");
        return keys.number("fieldEfficiency", new Range(0.01, 1, "a share from 0.01 to 1, like 0.65", "0.65"));
    }

    static Optional<Rig> rig(String id, Keys keys, WorkHours seasonHours) {
        int before = keys.problems().count();
        Optional<Double> drum = keys.quantity("drum", Kind.VOLUME, TANK);
        Optional<Double> batchCompost = keys.quantity("batchCompost", Kind.MASS, COMPOST);
        Optional<Double> batchTime = keys.quantity("batchTime", Kind.TIME, WORK_TIME);
        Optional<Double> leastBatchTime = keys.optionalQuantity("leastBatchTime", Kind.TIME, WORK_TIME);
        Optional<Double> cleanTime = keys.quantity("cleanTime", Kind.TIME, SHORT_TIME);
        Optional<Double> setUp = keys.optionalQuantity("setUp", Kind.TIME, SHORT_TIME);
        Optional<Double> closeUp = keys.optionalQuantity("closeUp", Kind.TIME, SHORT_TIME);
        Optional<Double> nurseTank = keys.quantity("nurseTank", Kind.VOLUME, TANK);
        Optional<Double> transferRate = keys.quantity("transferRate", Kind.FLOW, FLOW);
        Optional<Double> roadSpeed = keys.quantity("roadSpeed", Kind.SPEED, ROAD_SPEED);
        Optional<Double> payload = keys.optionalQuantity("payload", Kind.MASS, COMPOST);
        Optional<Double> emptyWeight = keys.optionalQuantity("emptyWeight", Kind.MASS, WEIGHT);
        Optional<Double> compostLoad = keys.optionalQuantity("compostLoad", Kind.MASS, COMPOST);
        Optional<Double> compostLoading = keys.optionalQuantity("compostLoading", Kind.TIME_PER_MASS, LOADING);
        Optional<Double> bucket = keys.optionalQuantity("bucket", Kind.MASS, BUCKET);
        Optional<ExtractAt> extractAt = extractAt(keys);
        Optional<String> at = keys.neededText("at", "yard");
        WorkHours hours = Times.hours(keys, seasonHours);
        keys.refuseOthers();
        if (drum.isPresent() && nurseTank.isPresent() && nurseTank.get() < drum.get()) {
            keys.problem("nurseTank", "holds less than the drum", "give a nurse tank of at least one drum of water");
        }
        if (batchTime.isPresent() && leastBatchTime.isPresent() && leastBatchTime.get() > batchTime.get()) {
            keys.problem("leastBatchTime", "is longer than a full batch takes", "give no more than batchTime");
        }
        if (keys.problems().count() > before) {
            return Optional.empty();
        }
        return Optional.of(new Rig(
                id,
                drum.orElseThrow(),
                batchCompost.orElseThrow(),
                seconds(batchTime),
                secondsIfGiven(leastBatchTime),
                seconds(cleanTime),
                seconds(setUp),
                seconds(closeUp),
                nurseTank.orElseThrow(),
                transferRate.orElseThrow(),
                roadSpeed.orElseThrow(),
                ifAny(payload),
                ifAny(emptyWeight),
                ifAny(compostLoad),
                compostLoading.orElse(Rig.USUAL_LOADING_MIN_PER_KG),
                ifAny(bucket),
                extractAt.orElseThrow(),
                at.orElseThrow(),
                hours));
    }

    static Optional<WaterPoint> waterPoint(String id, Keys keys, Places places) {
        int before = keys.problems().count();
        places.point(id, keys);
        Optional<Double> flow = keys.quantity("flow", Kind.FLOW, FLOW);
        Optional<Double> hoses = keys.number("hoses", new Range(1, 100, "a whole number from 1 to 100", "1"));
        if (hoses.isPresent() && hoses.get() != Math.rint(hoses.get())) {
            keys.problem("hoses", "is not a whole number", "use a whole number from 1 to 100");
        }
        Optional<Double> limit = keys.optionalQuantity(
                "dailyLimit", Kind.VOLUME, Range.between(1, 100_000_000, "0.3 to 26,000,000 gal (1 to 100,000,000 L)"));
        Optional<Double> treatment = keys.optionalQuantity("treatment", Kind.TIME, SHORT_TIME);
        Optional<Double> hookUp = keys.optionalQuantity("hookUp", Kind.TIME, SHORT_TIME);
        WorkHours hours = Times.hours(keys, WorkHours.ALWAYS);
        keys.refuseOthers();
        if (keys.problems().count() > before) {
            return Optional.empty();
        }
        return Optional.of(new WaterPoint(
                id,
                places.at(id),
                flow.orElseThrow(),
                hoses.orElse(1.0).intValue(),
                hours,
                ifAny(limit),
                seconds(treatment),
                seconds(hookUp)));
    }

    static Optional<CompostLot> compostLot(String id, Keys keys) {
        int before = keys.problems().count();
        Optional<Double> mass = keys.quantity("mass", Kind.MASS, COMPOST);
        Optional<LocalDate> from = keys.needed("from", "write the first day it may be used, like from: 2027-04-01")
                .flatMap(node -> Times.date(node, keys.problems()));
        Optional<String> at = keys.has("at") ? keys.neededText("at", "yard") : Optional.empty();
        keys.refuseOthers();
        return keys.problems().count() > before
                ? Optional.empty()
                : Optional.of(new CompostLot(id, mass.orElseThrow(), from.orElseThrow(), at));
    }

    static Optional<Recipe> recipe(String id, Keys keys) {
        int before = keys.problems().count();
        Optional<Double> mix = keys.quantity(
                "mix", Kind.VOLUME_PER_AREA, Range.between(0.1, 10_000, "0.02 to 1,000 gal/ac (0.1 to 10,000 L/ha)"));
        Optional<Double> compost = keys.quantity(
                "compost",
                Kind.MASS_PER_AREA,
                Range.between(0.001, 10_000, "0.001 to 8,900 lb/ac (0.001 to 10,000 kg/ha)"));
        Optional<Double> hold = keys.quantity("hold", Kind.TIME, Range.between(MINUTE_S, 7 * DAY_S, "1 min to 7 d"));
        Optional<Double> reserve = keys.optionalQuantity("reserve", Kind.TIME, Range.from0(7 * DAY_S, "0 to 7 d"));
        keys.refuseOthers();
        if (hold.isPresent() && reserve.isPresent() && reserve.get() >= hold.get()) {
            keys.problem("reserve", "leaves nothing of the hold time", "give less than hold");
        }
        return keys.problems().count() > before
                ? Optional.empty()
                : Optional.of(new Recipe(
                        id, mix.orElseThrow(), compost.orElseThrow(), seconds(hold), secondsIfGiven(reserve)));
    }

    private static Optional<ExtractAt> extractAt(Keys keys) {
        Optional<String> text = keys.text("extractAt");
        if (text.isEmpty()) {
            return Optional.of(ExtractAt.FIELD);
        }
        return switch (text.get().toLowerCase(Locale.ROOT)) {
            case "field" -> Optional.of(ExtractAt.FIELD);
            case "water" -> Optional.of(ExtractAt.WATER);
            default -> {
                keys.problem("extractAt", "'" + text.get() + "' is not a place to extract", "write field or water");
                yield Optional.empty();
            }
        };
    }

    private static OptionalDouble ifAny(Optional<Double> figure) {
        return figure.stream().mapToDouble(value -> value).findFirst();
    }

    private static OptionalInt secondsIfGiven(Optional<Double> time) {
        return time.isPresent() ? OptionalInt.of(seconds(time)) : OptionalInt.empty();
    }

    static int seconds(Optional<Double> time) {
        return (int) Math.round(time.orElse(0.0));
    }
}
