package freshfurrow.cli.command;

import freshfurrow.app.refusal.Refused;
import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.ToIntFunction;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Ctrl-C, or whatever else asks the program to end: a command that has something to keep is told to end soon, and the program waits
 * until it has written that, and said so.
 */
final class Interruption {
    private final CommandSpec spec;
    private final StopSignal stop = StopSignal.untilTold();
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean keeping;

    private Interruption(CommandSpec spec) {
        this.spec = spec;
    }

    /**
     * Runs a command until it has ended, also when the program is told to end meanwhile.
     *
     * @return its exit code
     */
    static int outlivedBy(CommandSpec spec, ToIntFunction<Interruption> command) {
        Interruption interruption = new Interruption(spec);
        Thread onInterrupt = new Thread(interruption::tell, "interruption");
        Runtime.getRuntime().addShutdownHook(onInterrupt);
        try {
            return command.applyAsInt(interruption);
        } catch (Refused | WrongArgument failure) {
            if (!interruption.stop.isTold()) {
                throw failure;
            }
            // nobody else would come to say it
            Output.print(spec.commandLine().getErr(), Failures.lines(failure));
            return Freshfurrow.PROBLEM;
        } finally {
            interruption.ended.countDown();
            forget(onInterrupt);
        }
    }

    /** Set when the program is told to end. */
    StopSignal stop() {
        return stop;
    }

    /** From now on there is something to keep. */
    void keep() {
        keeping = true;
    }

    private void tell() {
        stop.set();
        if (!keeping) {
            Output.print(
                    spec.commandLine().getErr(),
                    List.of("Stopped before planning started: nothing was planned or written."));
            return;
        }
        awaitUninterruptibly(ended);
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            return; // the program is ending: the hook is what lets it
        }
    }

    private static void awaitUninterruptibly(CountDownLatch latch) {
        boolean interrupted = false;
        while (true) {
            try {
                latch.await();
                break;
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
