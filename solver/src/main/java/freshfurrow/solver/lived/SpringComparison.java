package freshfurrow.solver.lived;

import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.ProgressListener;
import freshfurrow.solver.SeasonPlanner;
import freshfurrow.solver.compare.ComparedSprings;
import freshfurrow.solver.compare.ComparedVariant;
import freshfurrow.solver.compare.LivedVariant;
import freshfurrow.solver.compare.LivingRules;
import freshfurrow.solver.compare.SpringFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Plans variants of a season and has them live through the same springs. What comes out depends on the variants, the rules and the
 * numbers of the springs, not on the number of threads.
 */
public final class SpringComparison implements AutoCloseable {
    /** Springs that are lived again with one resource made free: the first ones, whichever springs are compared. */
    public static final int SAMPLE = 10;

    private final LivingRules rules;
    private final SpringSource springs;
    private final int threads;
    private final ExecutorService workers;
    private final SpringProgress progress;
    private final AtomicInteger lived = new AtomicInteger();

    /**
     * A comparison by rules.
     *
     * @param threads to work on, 1 or more
     */
    public SpringComparison(LivingRules rules, SpringSource springs, int threads, SpringProgress progress) {
        this.rules = rules;
        this.springs = springs;
        this.threads = threads;
        this.progress = progress;
        workers = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "spring");
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * The candidates through the springs.
     *
     * @param candidates the base first
     * @param numbers of the springs, ascending
     * @param sample springs to find out with what holds a variant back, at most {@link #SAMPLE}
     */
    public ComparedSprings run(List<Candidate> candidates, List<Integer> numbers, List<Integer> sample) {
        List<ComparedVariant> variants = new ArrayList<>();
        int resources = Resource.values().length;
        int all = candidates.size() * (numbers.size() + sample.size() * (1 + resources));
        for (Candidate candidate : candidates) {
            CompiledSeason compiled = CompiledSeason.of(inDryness(candidate.season()));
            List<List<String>> lists = plan(compiled);
            SpringLife life = new SpringLife(compiled, lists, rules.forecastDays());
            List<SpringFigures> rows = each(numbers, all, number -> life.live(springs.spring(number))
                    .figures());
            Optional<Costs> costs = candidate.costs();
            variants.add(new ComparedVariant(
                    new LivedVariant(
                            candidate.name(),
                            costs.map(prices -> OptionalDouble.of(prices.yearlySum()))
                                    .orElse(OptionalDouble.empty()),
                            rows.stream()
                                    .map(row -> costs.map(row::at).orElse(row))
                                    .toList()),
                    candidate.sha256(),
                    limits(compiled, lists, life, sample, all)));
        }
        return new ComparedSprings(rules, numbers, variants);
    }

    /** Nobody knows the weather of a season to come. */
    private static Season inDryness(Season season) {
        return season.inSpring(new GroundRecord("dry", Map.of(), Map.of()));
    }

    private List<List<String>> plan(CompiledSeason compiled) {
        return new SeasonPlanner(
                        compiled,
                        new PlanningOptions(Optional.empty(), OptionalLong.of(rules.steps()), rules.seed(), threads),
                        ProgressListener.SILENT)
                .plan();
    }

    private List<ComparedVariant.ResourceShare> limits(
            CompiledSeason compiled, List<List<String>> lists, SpringLife life, List<Integer> sample, int all) {
        if (sample.isEmpty()) {
            return List.of();
        }
        List<SpringFigures> before =
                each(sample, all, number -> life.live(springs.spring(number)).figures());
        SpringLimits limits = new SpringLimits(compiled, lists, rules.forecastDays());
        List<GroundRecord> grounds = sample.stream().map(springs::spring).toList();
        return each(IntStream.range(0, Resource.values().length).boxed().toList(), all, i -> {
            Resource free = Resource.values()[i];
            return limits.share(free, before, limits.freed(free, grounds));
        });
    }

    private interface Task<T> {
        T of(int number);
    }

    private <T> List<T> each(List<Integer> numbers, int all, Task<T> task) {
        List<Future<T>> running = new ArrayList<>();
        for (int number : numbers) {
            Callable<T> work = () -> {
                T done = task.of(number);
                progress.lived(lived.incrementAndGet(), all);
                return done;
            };
            running.add(workers.submit(work));
        }
        List<T> results = new ArrayList<>();
        for (Future<T> result : running) {
            results.add(get(result));
        }
        return results;
    }

    private static <T> T get(Future<T> result) {
        try {
            return result.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while living springs", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a spring failed: " + e.getCause(), e.getCause());
        }
    }

    @Override
    public void close() {
        workers.shutdownNow();
    }
}
