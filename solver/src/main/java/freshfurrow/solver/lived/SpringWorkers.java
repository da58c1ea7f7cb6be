package freshfurrow.solver.lived;

import freshfurrow.solver.threads.Workers;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** Lives springs on several threads and tells how many are lived; results come in the order of the springs. */
final class SpringWorkers {
    private final Workers workers;
    private final SpringProgress progress;
    private final int all;
    private final AtomicInteger lived = new AtomicInteger();

    /** For so many tasks in all. */
    SpringWorkers(Workers workers, int all, SpringProgress progress) {
        this.workers = workers;
        this.all = all;
        this.progress = progress;
    }

    /** The task done for each of the things; blocks until all are done. What a task throws is thrown on. */
    <S, T> List<T> each(List<S> things, Function<S, T> task) {
        return workers.each(things, thing -> {
            T done = task.apply(thing);
            progress.lived(lived.incrementAndGet(), all);
            return done;
        });
    }
}
