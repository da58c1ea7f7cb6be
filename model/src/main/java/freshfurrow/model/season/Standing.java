package freshfurrow.model.season;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where the machines of a season stand when it is already under way. What they do until they are free has begun before and is no
 * part of what is played out.
 *
 * @param now nothing begins before this
 * @param planters by id; one that is not named is free at its start place, its tank empty; likewise {@code rigs}
 * @param drawnL by id of a water point, what was drawn there on the date of {@code now}, L
 * @param promised by id of a field, what its crew was told for the days ahead that should stay as they are
 * @param loads made so far, so that names go on from there, 0 or more; likewise {@code batches}
 */
public record Standing(
        LocalDateTime now,
        Map<String, OfPlanter> planters,
        Map<String, OfRig> rigs,
        Map<String, Double> drawnL,
        Map<String, Promise> promised,
        int loads,
        int batches) {
    public Standing {
        planters = Collections.unmodifiableMap(new LinkedHashMap<>(planters));
        rigs = Collections.unmodifiableMap(new LinkedHashMap<>(rigs));
        drawnL = Collections.unmodifiableMap(new LinkedHashMap<>(drawnL));
        promised = Collections.unmodifiableMap(new LinkedHashMap<>(promised));
        if (loads < 0 || batches < 0) {
            throw new IllegalArgumentException(loads + " loads and " + batches + " batches, expected 0 or more");
        }
        drawnL.forEach((point, litres) -> {
            if (!(litres >= 0)) {
                throw new IllegalArgumentException(litres + " L drawn at " + point + ", expected 0 or more");
            }
        });
    }

    /** All machines free at their start places, tanks empty, nothing drawn or promised. */
    public static Standing at(LocalDateTime now) {
        return new Standing(now, Map.of(), Map.of(), Map.of(), Map.of(), 0, 0);
    }

    /** When a machine is done with what it has begun. */
    public LocalDateTime freeFrom(String machine) {
        OfRig rig = rigs.get(machine);
        OfPlanter planter = planters.get(machine);
        LocalDateTime free = rig != null ? rig.freeFrom() : planter != null ? planter.freeFrom() : now;
        return free.isBefore(now) ? now : free;
    }

    /** This standing with these promises in place of those it had. */
    public Standing withPromised(Map<String, Promise> promises) {
        return new Standing(now, planters, rigs, drawnL, promises, loads, batches);
    }

    /** This standing with other planters and rigs. */
    public Standing withMachines(Map<String, OfPlanter> otherPlanters, Map<String, OfRig> otherRigs) {
        return new Standing(now, otherPlanters, otherRigs, drawnL, promised, loads, batches);
    }

    /**
     * Where a planter stands.
     *
     * @param at id of a place
     * @param freeFrom when it is done with what it has begun
     * @param filledOn date of its last fill
     * @param tank what is in its tank
     * @param lines what went through its lines and was not flushed out since
     */
    public record OfPlanter(
            String at,
            LocalDateTime freeFrom,
            Optional<LocalDate> filledOn,
            Optional<Tank> tank,
            Optional<Lines> lines) {
        /** This planter, free from another moment on. */
        public OfPlanter withFreeFrom(LocalDateTime other) {
            return standing(at, other);
        }

        /** This planter at another place, and free from another time on. */
        public OfPlanter standing(String place, LocalDateTime free) {
            return new OfPlanter(place, free, filledOn, tank, lines);
        }
    }

    /**
     * What went through a planter's lines last.
     *
     * @param recipe id of a recipe
     * @param applied when mix of it was applied last
     */
    public record Lines(String recipe, LocalDateTime applied) {}

    /**
     * What is left of a load in a planter's tank.
     *
     * @param load its name
     * @param rig id of the rig that brought it
     */
    public record Tank(String load, String rig, Mix mix) {
        /** This tank with another mix in it. */
        public Tank withMix(Mix other) {
            return new Tank(load, rig, other);
        }
    }

    /**
     * Where a rig stands.
     *
     * @param at id of a place
     * @param freeFrom when it is done with what it has begun
     * @param waterL water on board that is not in a mix, L, 0 or more
     * @param mix what it has extracted and not passed on
     * @param cleanDue whether it has to be cleaned before its next batch
     * @param compostKg compost on board by id of its lot, kg, above 0, in the order in which it was loaded
     * @param setUpAt when it was set up, or was at work otherwise, and not closed up since
     */
    public record OfRig(
            String at,
            LocalDateTime freeFrom,
            double waterL,
            Optional<Mix> mix,
            boolean cleanDue,
            Map<String, Double> compostKg,
            Optional<LocalDateTime> setUpAt) {
        public OfRig {
            compostKg = Collections.unmodifiableMap(new LinkedHashMap<>(compostKg));
            if (!compostKg.values().stream().allMatch(kg -> kg > 0)) {
                throw new IllegalArgumentException("a rig with " + compostKg + " kg on board, expected above 0");
            }
            if (!(waterL >= 0)) {
                throw new IllegalArgumentException("a rig with " + waterL + " L on board, expected 0 or more");
            }
        }

        /** This rig, free from another moment on. */
        public OfRig withFreeFrom(LocalDateTime other) {
            return standing(at, other);
        }

        /** This rig at another place, and free from another time on. */
        public OfRig standing(String place, LocalDateTime free) {
            return new OfRig(place, free, waterL, mix, cleanDue, compostKg, setUpAt);
        }

        /** A rig with no compost on board that is not set up. */
        public OfRig(String at, LocalDateTime freeFrom, double waterL, Optional<Mix> mix, boolean cleanDue) {
            this(at, freeFrom, waterL, mix, cleanDue, Map.of(), Optional.empty());
        }
    }

    /**
     * By whom, and from which day on, a field was to be planted.
     *
     * @param planter id of a planter
     * @param day date on which it is begun
     */
    public record Promise(String planter, LocalDate day) {}
}
