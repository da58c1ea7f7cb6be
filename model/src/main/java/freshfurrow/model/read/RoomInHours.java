package freshfurrow.model.read;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.M2_PER_HA;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.read.FieldReader.FieldSource;
import freshfurrow.model.read.WaysBetweenFields.Drive;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WorkHours;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whether what a machine does in one go has room in its hours: a batch, a clean, a draw, a transfer and a drive each have to fit
 * into one working period, so one that is longer than all of them would never be done.
 */
final class RoomInHours {
    private static final String CHECK_WAYS = "check coordinates or distances, road speeds and hours";

    private final Season season;
    private final Keys file;
    private final Map<String, Keys> planters;
    private final Map<String, Keys> rigs;
    private final Map<String, Keys> lots;
    private final List<FieldSource> sources;
    private final Problems problems;

    RoomInHours(
            Season season,
            Keys file,
            Map<String, Keys> planters,
            Map<String, Keys> rigs,
            Map<String, Keys> lots,
            List<FieldSource> sources,
            Problems problems) {
        this.season = season;
        this.file = file;
        this.planters = planters;
        this.rigs = rigs;
        this.lots = lots;
        this.sources = sources;
        this.problems = problems;
    }

    void check() {
        season.rigs().forEach(this::checkDay);
        season.applicators().forEach(this::checkDay);
        if (problems.count() > 0) {
            return;
        }
        season.rigs().forEach(this::checkBatches);
        if (season.saysWhereCompostLies()) {
            season.rigs().forEach(this::checkLoading);
            season.compost().forEach(this::checkWayToLot);
        }
        checkDraws();
        season.applicators().forEach(this::checkTransfers);
        checkPlantersDrives();
        checkRigsDrives();
    }

    private void checkDay(Rig rig) {
        if (rig.hours().without(rig.kept()).isEmpty()) {
            rigs.get(rig.id())
                    .problem(
                            rig.setUpS() > rig.closeUpS() ? "setUp" : "closeUp",
                            "setting up and closing up leave nothing of a day of the rig's hours",
                            "give longer hours, or less time for setUp and closeUp");
        }
    }

    private void checkDay(Applicator planter) {
        if (planter.hours().without(planter.kept()).isEmpty()) {
            planters.get(planter.id())
                    .problem(
                            "flush",
                            "flushing leaves nothing of a day of the " + noun(planter) + "'s hours",
                            "give longer hours, or less time for flush");
        } else if (work(planter).within(planter.applyHours()).isEmpty()) {
            planters.get(planter.id())
                    .problem(
                            "sprayHours",
                            "lie outside the sprayer's hours",
                            "give spray hours that begin and end within its hours");
        }
    }

    private static String noun(Applicator machine) {
        return machine.work().key() + "er";
    }

    private void checkBatches(Rig rig) {
        Keys keys = rigs.get(rig.id());
        int longest = longest(work(rig), work(rig));
        if (rig.batchTimeS() > longest) {
            keys.problem(
                    "batchTime",
                    "a batch does not fit in any of the rig's hours",
                    "give longer hours or a shorter batch");
        }
        if (rig.cleanTimeS() > longest) {
            keys.problem("cleanTime", "cleaning does not fit in any of the rig's hours", "give longer hours");
        }
    }

    private void checkLoading(Rig rig) {
        if (rig.mostCompostKg() * rig.compostLoadingMinPerKg() * MINUTE_S > longest(rig.hours(), rig.hours())) {
            rigs.get(rig.id())
                    .problem(
                            "compostLoad",
                            "loading it does not fit in any of the rig's hours",
                            "give longer hours, a smaller compostLoad or a quicker compostLoading");
        }
    }

    private void checkWayToLot(CompostLot lot) {
        boolean reached = season.rigs().stream().anyMatch(rig -> lot.at().stream()
                .anyMatch(place -> season.distances().metres(rig.at(), place) / rig.roadSpeedMPerS()
                        <= longest(rig.hours(), rig.hours())));
        if (!reached) {
            lots.get(lot.id())
                    .problem("at", "is too far away: a drive to it does not fit in any rig's hours", CHECK_WAYS);
        }
    }

    private void checkDraws() {
        Set<String> used = new HashSet<>();
        for (Rig rig : season.rigs()) {
            List<String> fitting = season.waterPoints().stream()
                    .filter(point -> drawS(rig, point) <= longest(work(rig), point.hours()))
                    .map(WaterPoint::id)
                    .toList();
            used.addAll(fitting);
            if (fitting.isEmpty()) {
                rigs.get(rig.id())
                        .problem(
                                "nurseTank",
                                "filling it does not fit in any hours that the rig shares with a water point",
                                "give longer hours, a smaller nurse tank or more flow");
            }
        }
        for (WaterPoint point : season.waterPoints()) {
            if (!used.isEmpty() && !used.contains(point.id())) {
                file.keys("waterPoints")
                        .flatMap(points -> points.keys(point.id()))
                        .ifPresent(keys -> problems.add(
                                keys.place(),
                                "filling a nurse tank does not fit in any hours that the water point shares with a rig",
                                "give longer hours or more flow, or leave this water point out"));
            }
        }
    }

    private void checkTransfers(Applicator planter) {
        boolean fits = planter.on().isPresent()
                ? planter.fillSetupS() <= longest(work(planter), work(planter))
                : season.rigs().stream().anyMatch(rig -> transferS(planter, rig) <= longest(work(planter), work(rig)));
        if (!fits && planter.on().isPresent()) {
            planters.get(planter.id())
                    .problem("fillSetup", "does not fit in any hours of the rig", "give longer hours or less time");
        } else if (!fits) {
            planters.get(planter.id())
                    .problem(
                            "tank",
                            "filling it does not fit in any hours that the " + noun(planter) + " shares with a rig",
                            "give longer hours, a smaller tank or a higher transfer rate");
        }
    }

    /** The fields that no planter can be driven to; a planter that gets nowhere is told of instead. */
    private void checkPlantersDrives() {
        Map<PlantersDrive, WaysBetweenFields> ways = new HashMap<>();
        Set<String> reached = new HashSet<>();
        Set<String> stuck = new HashSet<>();
        for (Applicator planter : season.applicators()) {
            BitSet own = own(planter);
            Drive drive =
                    new Drive(planter.moveTimeS(), planter.roadSpeedMPerS(), longest(work(planter), work(planter)));
            Set<String> way = ways.computeIfAbsent(
                            new PlantersDrive(drive, own),
                            alike -> new WaysBetweenFields(ids(own), drive, season.distances()))
                    .from(planter.at());
            reached.addAll(way);
            if (way.isEmpty() && !own.isEmpty()) {
                stuck.add(planter.id());
                planters.get(planter.id())
                        .problem(
                                "roadSpeed",
                                "a drive to any field does not fit in any of the " + noun(planter) + "'s hours",
                                CHECK_WAYS);
            }
        }
        for (int i = 0; i < sources.size(); i++) {
            Field field = season.fields().get(i);
            boolean allowed = season.applicators().stream()
                    .anyMatch(planter -> field.allows(planter) && !stuck.contains(planter.id()));
            if (allowed && !reached.contains(field.id())) {
                problems.add(
                        sources.get(i).keys().place(),
                        "is too far away: a drive to it does not fit in any "
                                + field.work().key() + "er's hours",
                        CHECK_WAYS);
            }
        }
    }

    /** Planters that drive alike and may plant the same fields. */
    private record PlantersDrive(Drive drive, BitSet fields) {}

    private BitSet own(Applicator planter) {
        BitSet own = new BitSet();
        for (int i = 0; i < season.fields().size(); i++) {
            own.set(i, season.fields().get(i).allows(planter));
        }
        return own;
    }

    private List<String> ids(BitSet fields) {
        return fields.stream().mapToObj(i -> season.fields().get(i).id()).toList();
    }

    /** The fields that no rig can bring water to; a rig that gets to no field is told of instead. */
    private void checkRigsDrives() {
        List<String> fields = season.fields().stream().map(Field::id).toList();
        Map<Drive, WaysBetweenFields> ways = new HashMap<>();
        Set<String> reached = new HashSet<>();
        boolean moving = false;
        for (Rig rig : season.rigs()) {
            Drive drive = new Drive(0, rig.roadSpeedMPerS(), longest(work(rig), work(rig)));
            WaysBetweenFields alike =
                    ways.computeIfAbsent(drive, one -> new WaysBetweenFields(fields, one, season.distances()));
            List<Set<String>> way = season.waterPoints().stream()
                    .map(WaterPoint::id)
                    .filter(point -> alike.isOneDrive(rig.at(), point))
                    .map(alike::from)
                    .filter(fromPoint -> !fromPoint.isEmpty())
                    .toList();
            way.stream().filter(fromPoint -> reached.size() < fields.size()).forEach(reached::addAll);
            moving |= !way.isEmpty();
            if (way.isEmpty()) {
                rigs.get(rig.id())
                        .problem(
                                "roadSpeed",
                                "a drive to a water point and from there to a field does not fit in any of the rig's hours",
                                CHECK_WAYS);
            }
        }
        for (int i = 0; moving && i < sources.size(); i++) {
            if (!reached.contains(season.fields().get(i).id())) {
                problems.add(
                        sources.get(i).keys().place(),
                        "is too far away: a drive to it from a water point does not fit in any rig's hours",
                        CHECK_WAYS);
            }
        }
    }

    private static double drawS(Rig rig, WaterPoint point) {
        return point.beforeDrawS()
                + Math.min(rig.nurseTankL(), point.dailyLimitL().orElse(rig.nurseTankL())) / point.flowLPerS();
    }

    /** As long as the largest load takes that the tank, the nurse tank and the hold time allow. */
    private double transferS(Applicator planter, Rig rig) {
        double withinHoldL = season.recipes().stream()
                .mapToDouble((Recipe recipe) ->
                        planter.fieldCapacityM2PerS() * recipe.holdS() / M2_PER_HA * recipe.mixLPerHa())
                .max()
                .orElseThrow();
        double litres = Math.min(withinHoldL, Math.min(planter.tankL(), rig.nurseTankL()));
        return planter.fillSetupS() + litres / rig.transferLPerS();
    }

    /** Its hours without what its days begin and end with, which leaves something. */
    private static WorkHours work(Machine machine) {
        return machine.hours().without(machine.kept()).orElseThrow();
    }

    /** Seconds of the longest period in which both work; periods that touch at midnight are one. */
    private int longest(WorkHours one, WorkHours other) {
        int longest = 0;
        int first = 0;
        int last = 0;
        for (DaySpan a : one.spans()) {
            for (DaySpan b : other.spans()) {
                int start = Math.max(a.startS(), b.startS());
                int end = Math.min(a.endS(), b.endS());
                if (start == 0 && end == DAY_S) {
                    return season.days() * DAY_S;
                }
                longest = Math.max(longest, end - start);
                first = start == 0 ? Math.max(first, end) : first;
                last = end == DAY_S ? Math.max(last, end - start) : last;
            }
        }
        return Math.max(longest, season.days() > 1 ? first + last : longest);
    }
}
