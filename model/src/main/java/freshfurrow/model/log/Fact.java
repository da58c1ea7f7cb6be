package freshfurrow.model.log;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Something that happened. When, its entry in the log says. */
public sealed interface Fact {
    /**
     * Planting of a part of a field, or all of it, ended.
     *
     * @param areaHa ha, above 0
     * @param planter id, where it is known
     * @param load what people call the planter fill it was planted from, where it is known
     * @param withoutExtract whether it was planted without any
     */
    record Planted(String field, double areaHa, Optional<String> planter, Optional<String> load, boolean withoutExtract)
            implements Fact {
        /** In place of a load in the log: planted without extract. */
        public static final String NO_LOAD = "none";

        public Planted {
            aboveZero("area planted", areaHa);
            if (withoutExtract && load.isPresent()) {
                throw new IllegalArgumentException("planted without extract and from load " + load.get());
            }
        }

        /** Planted with extract, from a load that is known or not. */
        public Planted(String field, double areaHa, Optional<String> planter, Optional<String> load) {
            this(field, areaHa, planter, load, false);
        }
    }

    /**
     * Extraction of a batch ended.
     *
     * @param kgByLot compost taken, kg by id of its lot, each above 0; at least one
     * @param loads what people call the planter fills that the batch goes into; empty when that is not known
     * @param place id of the field, place or water point where it was made, where it is known
     */
    record BatchMade(String rig, Map<String, Double> kgByLot, List<String> loads, Optional<String> place)
            implements Fact {
        public BatchMade {
            kgByLot = Collections.unmodifiableMap(new LinkedHashMap<>(kgByLot));
            loads = List.copyOf(loads);
            if (kgByLot.isEmpty()) {
                throw new IllegalArgumentException("a batch of no compost");
            }
            kgByLot.values().forEach(kg -> aboveZero("compost of a batch", kg));
        }

        /** All compost in it, kg. */
        public double compostKg() {
            return kgByLot.values().stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    /**
     * A rig was done with pumping a load into a planter or sprayer.
     *
     * @param litres L, above 0
     * @param load what people call the load, where it is known
     */
    record Transferred(String rig, double litres, Optional<String> load) implements Fact {
        public Transferred {
            aboveZero("mix transferred", litres);
        }
    }

    /**
     * A machine arrived.
     *
     * @param from id of the field, place or water point that it came from
     * @param to id of another one
     */
    record Driven(String machine, String from, String to) implements Fact {
        public Driven {
            if (from.equals(to)) {
                throw new IllegalArgumentException("a drive from " + from + " to itself");
            }
        }
    }

    /**
     * A rig was done with drawing water.
     *
     * @param point id of the water point
     * @param litres L, above 0
     */
    record WaterDrawn(String point, String rig, double litres) implements Fact {
        public WaterDrawn {
            aboveZero("water drawn", litres);
        }
    }

    /**
     * Compost came.
     *
     * @param kg kg, above 0
     */
    record CompostDelivered(String lot, double kg) implements Fact {
        public CompostDelivered {
            aboveZero("compost delivered", kg);
        }
    }

    /**
     * Compost was found to be of no use.
     *
     * @param kg kg, above 0; empty when it was all that was left of the lot
     */
    record CompostSpoiled(String lot, OptionalDouble kg) implements Fact {
        public CompostSpoiled {
            kg.ifPresent(mass -> aboveZero("compost spoiled", mass));
        }
    }

    /**
     * Rain began.
     *
     * @param mm its depth in the end, mm, above 0
     */
    record RainMeasured(double mm) implements Fact {
        public RainMeasured {
            aboveZero("rain", mm);
        }
    }

    /**
     * A planter or rig broke down.
     *
     * @param until when it works again, maybe in the future; empty when nobody knows
     */
    record MachineDown(String machine, Optional<LocalDateTime> until) implements Fact {}

    /**
     * A machine is behind what the plan of that time says.
     *
     * @param by how much of its working time, 0 or more; 0 when it has caught up
     */
    record MachineBehind(String machine, Duration by) implements Fact {
        public MachineBehind {
            if (by.isNegative()) {
                throw new IllegalArgumentException(machine + " is " + by + " behind, expected 0 or more");
            }
        }
    }

    /**
     * Somebody who looked at a field judged its ground.
     *
     * @param fit whether it bears machines
     * @param until from when on it will, if it does not; empty when nobody knows, and when it does
     */
    record GroundJudged(String field, boolean fit, Optional<LocalDateTime> until) implements Fact {
        public GroundJudged {
            if (fit && until.isPresent()) {
                throw new IllegalArgumentException(field + " is fit, and will be at " + until.get());
            }
        }
    }

    /** Something worth keeping that no other fact says; its entry's note says what. */
    record Noted() implements Fact {}

    /**
     * An earlier entry was wrong; this entry's note says why.
     *
     * @param entry number of the entry that does not count any more
     */
    record Voided(int entry) implements Fact {}

    private static void aboveZero(String what, double figure) {
        if (!(figure > 0) || Double.isInfinite(figure)) {
            throw new IllegalArgumentException(what + " is " + figure + ", expected above 0");
        }
    }
}
