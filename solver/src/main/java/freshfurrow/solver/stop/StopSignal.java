package freshfurrow.solver.stop;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Says to all work of a run that it has to end: once someone has told it, or once a time is over. Every loop that may be long asks it
 * now and then. For use by any threads.
 */
public final class StopSignal {
    private final Told told;
    private final OptionalLong deadlineNs;

    private StopSignal(Told told, OptionalLong deadlineNs) {
        this.told = told;
        this.deadlineNs = deadlineNs;
    }

    /** A signal that is set by {@link #set} only. */
    public static StopSignal untilTold() {
        return new StopSignal(new Told(), OptionalLong.empty());
    }

    /** This signal, but also set from a reading of {@link System#nanoTime} on. Whoever sets one of the two sets both. */
    public StopSignal noLaterThan(long ns) {
        boolean sooner = deadlineNs.isEmpty() || ns - deadlineNs.getAsLong() < 0;
        return sooner ? new StopSignal(told, OptionalLong.of(ns)) : this;
    }

    /** This signal, but also set once a part of the time that is left to it is over; itself, where that is not limited. */
    public StopSignal within(double part) {
        return left().map(left -> noLaterThan(System.nanoTime() + (long) (part * left.toNanos())))
                .orElse(this);
    }

    /** Ends all work that heeds this signal, or one made from it, or that it was made from. */
    public void set() {
        told.tell();
    }

    public boolean isSet() {
        return isTold() || (deadlineNs.isPresent() && System.nanoTime() - deadlineNs.getAsLong() >= 0);
    }

    /** Whether {@link #set} was called, whatever the time. */
    public boolean isTold() {
        return told.isTold;
    }

    /** Time until the signal sets itself, 0 or less when that is over; empty when it never does. */
    public Optional<Duration> left() {
        return deadlineNs.isEmpty()
                ? Optional.empty()
                : Optional.of(Duration.ofNanos(deadlineNs.getAsLong() - System.nanoTime()));
    }

    /** To be closed when the listener needs to hear nothing more. */
    @FunctionalInterface
    public interface Listening {
        void close();
    }

    /**
     * Has something done when the signal is told, for what cannot ask; at once, when it has been.
     *
     * @param listener called on the thread that tells, maybe twice; returns quickly
     */
    public Listening whenTold(Runnable listener) {
        told.listeners.add(listener);
        if (isTold()) {
            listener.run();
        }
        return () -> told.listeners.remove(listener);
    }

    private static final class Told {
        private final Set<Runnable> listeners = ConcurrentHashMap.newKeySet();
        private volatile boolean isTold;

        void tell() {
            isTold = true;
            listeners.forEach(Runnable::run);
        }
    }
}
