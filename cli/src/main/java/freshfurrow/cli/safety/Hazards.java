package freshfurrow.cli.safety;

import freshfurrow.cli.day.CompostHold;
import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.NurseTank;
import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.day.PlannedMachine;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.season.Work;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;

/** The hazards of a plan's work. */
public final class Hazards {
    /** What a tank may hold and still count as empty, or lack and still count as full, L. */
    private static final double SLACK_L = 1;

    private final Plan plan;
    private final PlanIndex index;
    private final List<SortedMap<LocalDate, MachineDay>> days;

    public Hazards(PlanIndex index) {
        this.plan = index.plan();
        this.index = index;
        days = PlannedMachine.of(plan).stream().map(MachineDay::byDate).toList();
    }

    /** Those of all machines on a date, those of the same kind as one, what is over a limit first. */
    public List<Hazard> on(LocalDate date) {
        return worstFirst(SharedHazards.of(days.stream()
                .map(ofMachine -> ofMachine.get(date))
                .filter(Objects::nonNull)
                .flatMap(day -> of(day).stream())
                .toList()));
    }

    /** Those of a machine on a day, what is over a limit first. */
    public List<Hazard> of(MachineDay day) {
        List<Hazard> all = new ArrayList<>();
        if (day.machine().kind().isRig()) {
            ofRig(day, all);
        } else {
            ofPlanter(day, all);
        }
        if (sprays(day)) {
            all.add(new Hazard.Spraying());
        }
        clockChanges(day, all);
        return worstFirst(all);
    }

    private boolean sprays(MachineDay day) {
        return day.each(Activity.Plant.class).stream()
                .anyMatch(plant -> index.workOf(index.load(plant.load()).planter()) == Work.SPRAY);
    }

    private void ofRig(MachineDay day, List<Hazard> all) {
        Plan.RigPlan rig = rig(day);
        NurseTank tank = index.nurseTank(day.machine().id());
        Set<Exposure> exposed = Exposure.of(day.activities(), index);
        List<Activity.Move> moves = day.each(Activity.Move.class);
        double batchesKg = day.each(Activity.Extract.class).stream()
                .mapToDouble(extract -> index.batch(extract.batch()).compostKg())
                .sum();
        double liftedKg = batchesKg
                + day.each(Activity.LoadCompost.class).stream()
                        .mapToDouble(Activity.LoadCompost::kg)
                        .sum();
        CompostHold hold = index.compostHold(day.machine().id());
        double compostKg = hold.isUsed() ? hold.mostKgOn(day.date()) : batchesKg;
        double waterL = tank.mostLitresOn(day.date());
        if (exposed.contains(Exposure.ROAD)) {
            if (waterL > SLACK_L) {
                all.add(new Hazard.LoadedRig(
                        day.machine().id(), waterL, Water.kilograms(waterL), compostKg, rig.payloadKg()));
            }
            onTheRoad(
                    moves.stream()
                            .map(Activity.Move::start)
                            .filter(start -> isPartFilled(tank.litresAt(start), rig.nurseTankL()))
                            .toList(),
                    all);
        }
        if (exposed.contains(Exposure.DRINKING_WATER)) {
            all.add(new Hazard.Backflow(day.each(Activity.Draw.class).stream()
                    .map(Activity.Draw::at)
                    .distinct()
                    .toList()));
        }
        if (exposed.contains(Exposure.COMPOST)) {
            all.add(new Hazard.Lifting(rig.bucketKg(), liftedKg));
        }
        atAnyMachine(exposed, all);
    }

    private static void atAnyMachine(Set<Exposure> exposed, List<Hazard> all) {
        if (exposed.contains(Exposure.DUST_AND_MIST)) {
            all.add(new Hazard.DustAndMist());
        }
        if (exposed.contains(Exposure.PRESSURE)) {
            all.add(new Hazard.Pressure());
        }
        if (exposed.contains(Exposure.OLD_MIX)) {
            all.add(new Hazard.OldMix());
        }
        if (exposed.contains(Exposure.FOOD_CROP)) {
            all.add(new Hazard.FoodCrop());
        }
    }

    private void ofPlanter(MachineDay day, List<Hazard> all) {
        Set<Exposure> exposed = Exposure.of(day.activities(), index);
        if (exposed.contains(Exposure.ROAD)) {
            onTheRoad(
                    day.each(Activity.Move.class).stream()
                            .map(Activity.Move::start)
                            .filter(start ->
                                    OnBoard.at(plan, day.machine().id(), start).isPresent())
                            .toList(),
                    all);
        }
        atAnyMachine(exposed, all);
    }

    /** Those that a load crosses which is made, brought or planted on the day. */
    private void clockChanges(MachineDay day, List<Hazard> all) {
        for (ClockChanges.Change change : plan.season().clockChanges()) {
            if (plan.loads().stream()
                    .filter(load -> day.machine().id().equals(load.rig())
                            || day.machine().id().equals(load.planter()))
                    .anyMatch(load -> isWorkOf(load, day.date()) && crosses(load, change))) {
                all.add(new Hazard.ClockChange(change));
            }
        }
    }

    private boolean isWorkOf(Plan.Load load, LocalDate date) {
        return !date.isBefore(made(load).toLocalDate())
                && !date.isAfter(load.lastDrop().toLocalDate());
    }

    private boolean crosses(Plan.Load load, ClockChanges.Change change) {
        return !made(load).isAfter(change.from()) && !load.deadline().isBefore(change.from());
    }

    private LocalDateTime made(Plan.Load load) {
        return load.batches().stream()
                .map(batch -> index.batch(batch).end())
                .min(LocalDateTime::compareTo)
                .orElse(load.lastDrop());
    }

    private static void onTheRoad(List<LocalDateTime> partFilled, List<Hazard> all) {
        all.add(partFilled.isEmpty() ? new Hazard.OnTheRoad() : new Hazard.PartFilledTank(partFilled));
    }

    private static boolean isPartFilled(double litres, OptionalDouble tankL) {
        return litres > SLACK_L && (tankL.isEmpty() || litres < tankL.getAsDouble() - SLACK_L);
    }

    private Plan.RigPlan rig(MachineDay day) {
        Plan.RigPlan rig = plan.rigs().get(day.machine().id());
        if (rig == null) {
            throw new IllegalArgumentException(
                    "the plan has no rig " + day.machine().id());
        }
        return rig;
    }

    private static List<Hazard> worstFirst(Iterable<Hazard> hazards) {
        List<Hazard> sorted = new ArrayList<>();
        hazards.forEach(hazard -> {
            if (hazard.isOverLimit()) {
                sorted.add(hazard);
            }
        });
        hazards.forEach(hazard -> {
            if (!hazard.isOverLimit()) {
                sorted.add(hazard);
            }
        });
        return sorted;
    }
}
