package freshfurrow.model.files;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

/** Keeps a program that is told to end (Ctrl-C) from ending in the midst of writing, which would leave temporary files. */
final class EndHeldOff {
    private EndHeldOff() {}

    /** What is finished before the program ends. */
    @FunctionalInterface
    interface Work<T> {
        /**
         * Does it.
         *
         * @param ending whether the program was told to end, so that to wait for others is in vain
         */
        T run(BooleanSupplier ending) throws IOException;
    }

    static <T> T during(Work<T> work) throws IOException {
        CountDownLatch done = new CountDownLatch(1);
        AtomicBoolean ending = new AtomicBoolean();
        Thread hook = new Thread(
                () -> {
                    ending.set(true);
                    await(done);
                },
                "finish writing");
        begin(hook);
        try {
            return work.run(ending::get);
        } finally {
            done.countDown();
            forget(hook);
        }
    }

    private static void begin(Thread hook) {
        try {
            Runtime.getRuntime().addShutdownHook(hook);
        } catch (IllegalStateException e) {
            return; // it is ending: whoever writes now is waited for already
        }
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            return; // it is ending, and the hook lets it
        }
    }

    private static void await(CountDownLatch done) {
        try {
            done.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
