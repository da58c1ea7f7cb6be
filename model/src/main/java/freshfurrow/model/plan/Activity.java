package freshfurrow.model.plan;

import freshfurrow.model.plan.ActivityParts.Amount;
import freshfurrow.model.plan.ActivityParts.Name;
import java.time.Duration;
import java.time.LocalDateTime;

/** Something a planter or a rig does from {@code start} to {@code end}. */
public sealed interface Activity {
    LocalDateTime start();

    LocalDateTime end();

    /** From start to end by the clock on the wall; below zero when they are reversed. */
    default Duration span() {
        return Duration.between(start(), end());
    }

    /** Whether the machine works, rather than stands and waits. */
    default boolean isWork() {
        return true;
    }

    /** The place where it begins: a field, a water point or another place of the season. */
    String at();

    /** The place where it ends. */
    default String endsAt() {
        return at();
    }

    /** Litres that its rig has on board more at the end than at the start; below 0 where it passes on or lets out. */
    default double onRigL() {
        return 0;
    }

    ActivityKind kind();

    /** Asks a visitor for what it makes of this kind of activity. */
    <T> T accept(ActivityVisitor<T> visitor);

    /**
     * Tells all that it has besides its times, in the order of a plan file.
     *
     * @throws X when {@code parts} does
     */
    <X extends Exception> void tell(ActivityParts<X> parts) throws X;

    /** A drive from one place to another; a planter's includes folding and unfolding. */
    record Move(LocalDateTime start, LocalDateTime end, String from, String to, double km) implements Activity {
        @Override
        public String at() {
            return from;
        }

        @Override
        public String endsAt() {
            return to;
        }

        @Override
        public ActivityKind kind() {
            return ActivityKind.MOVE;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.FROM, from);
            parts.name(Name.TO, to);
            parts.amount(Amount.KM, km);
        }
    }

    /** A planter stands and cannot go on. */
    record Wait(LocalDateTime start, LocalDateTime end, String at, WaitReason why) implements Activity {
        @Override
        public boolean isWork() {
            return false;
        }

        @Override
        public ActivityKind kind() {
            return ActivityKind.WAIT;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
            parts.why(why);
        }
    }

    /** A planter takes a load. */
    record Fill(LocalDateTime start, LocalDateTime end, String at, String load) implements Activity {
        @Override
        public ActivityKind kind() {
            return ActivityKind.FILL;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
            parts.name(Name.LOAD, load);
        }
    }

    /** A planter plants a part of a field. */
    sealed interface Planting extends Activity {
        String field();

        /** ha, 0 or more. */
        double areaHa();

        @Override
        default String at() {
            return field();
        }
    }

    /** A planter plants a part of a field with extract, out of one load. */
    record Plant(LocalDateTime start, LocalDateTime end, String field, String load, double areaHa) implements Planting {
        @Override
        public ActivityKind kind() {
            return ActivityKind.PLANT;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.FIELD, field);
            parts.name(Name.LOAD, load);
            parts.amount(Amount.AREA_HA, areaHa);
        }
    }

    /** A planter plants a part of a field without extract, with an empty tank. */
    record PlantWithout(LocalDateTime start, LocalDateTime end, String field, double areaHa) implements Planting {
        @Override
        public ActivityKind kind() {
            return ActivityKind.PLANT_WITHOUT;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.FIELD, field);
            parts.amount(Amount.AREA_HA, areaHa);
        }
    }

    /** A rig draws water; hooking up and treatment are part of it. */
    record Draw(LocalDateTime start, LocalDateTime end, String at, double litres) implements Activity {
        @Override
        public double onRigL() {
            return litres;
        }

        @Override
        public ActivityKind kind() {
            return ActivityKind.DRAW;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.WATER_POINT, at);
            parts.amount(Amount.LITRES, litres);
        }
    }

    /** A rig loads compost where it lies. */
    record LoadCompost(LocalDateTime start, LocalDateTime end, String at, String lot, double kg) implements Activity {
        @Override
        public ActivityKind kind() {
            return ActivityKind.LOAD_COMPOST;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
            parts.name(Name.LOT, lot);
            parts.amount(Amount.KG, kg);
        }
    }

    /** A rig extracts one batch. */
    record Extract(LocalDateTime start, LocalDateTime end, String at, String batch) implements Activity {
        @Override
        public ActivityKind kind() {
            return ActivityKind.EXTRACT;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
            parts.name(Name.BATCH, batch);
        }
    }

    /** A rig is cleaned after a batch. */
    record Clean(LocalDateTime start, LocalDateTime end, String at) implements Activity {
        @Override
        public ActivityKind kind() {
            return ActivityKind.CLEAN;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
        }
    }

    /** A rig pumps a load into a planter; setup is part of it. */
    record Transfer(LocalDateTime start, LocalDateTime end, String at, String load, double litres) implements Activity {
        @Override
        public double onRigL() {
            return -litres;
        }

        @Override
        public ActivityKind kind() {
            return ActivityKind.TRANSFER;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
            parts.name(Name.LOAD, load);
            parts.amount(Amount.LITRES, litres);
        }
    }

    /** A rig lets out mix that has aged. */
    record Dump(LocalDateTime start, LocalDateTime end, String at, double litres) implements Activity {
        @Override
        public double onRigL() {
            return -litres;
        }

        @Override
        public ActivityKind kind() {
            return ActivityKind.DUMP;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
            parts.amount(Amount.LITRES, litres);
        }
    }

    /** A rig is set up before its first work of a day. */
    record SetUp(LocalDateTime start, LocalDateTime end, String at) implements Activity {
        @Override
        public ActivityKind kind() {
            return ActivityKind.SET_UP;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
        }
    }

    /** A rig is closed up after its last work of a day. */
    record CloseUp(LocalDateTime start, LocalDateTime end, String at) implements Activity {
        @Override
        public ActivityKind kind() {
            return ActivityKind.CLOSE_UP;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
        }
    }

    /** A planter's lines are flushed after mix has gone through them. */
    record Flush(LocalDateTime start, LocalDateTime end, String at) implements Activity {
        @Override
        public ActivityKind kind() {
            return ActivityKind.FLUSH;
        }

        @Override
        public <T> T accept(ActivityVisitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public <X extends Exception> void tell(ActivityParts<X> parts) throws X {
            parts.name(Name.AT, at);
        }
    }
}
