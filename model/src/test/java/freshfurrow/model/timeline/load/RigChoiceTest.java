package freshfurrow.model.timeline.load;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.mix.LoadCeiling;
import freshfurrow.model.timeline.mix.MixSource;
import freshfurrow.model.timeline.mix.MixSources;
import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.mix.RigDay;
import freshfurrow.model.timeline.planters.FieldOrder;
import freshfurrow.model.timeline.planters.FieldRun;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.Preparation;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.WaterPoints;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;

/** The rig that is chosen is the one that is the best when all of them are asked, whatever the rigs and the hoses are about. */
class RigChoiceTest {
    private record Answer(int rig, MixSource source, int start, int metres) {}

    @Property(tries = 1_000)
    void choosesAsIfEveryRigWereAsked(@ForAll long seed) {
        Machines machines = new Machines(SeasonTables.of(withTwins(RandomSeasons.season(seed))), new Random(seed));

        for (int request = 0; request < 20; request++) {
            machines.move();

            Answer best = machines.bestOfAll();
            Quote chosen = machines.chosen();
            if (best == null) {
                assertThat(chosen).isNull();
            } else {
                assertThat(chosen).isNotNull();
                assertThat(chosen.rig()).isEqualTo(best.rig);
                assertThat(chosen.source()).isEqualTo(best.source);
            }
        }
    }

    /** The season with two more rigs like each, and so with some that are alike and some that are not. */
    private static Season withTwins(Season season) {
        List<Rig> rigs = new ArrayList<>();
        season.rigs().forEach(rig -> Stream.of("", " second", " third")
                .forEach(name -> rigs.add(rig.change().id(rig.id() + name).rig())));
        return season.change().rigs(rigs).season();
    }

    /** Machines anywhere in the middle of a tables, and a planter that asks for a fill. */
    private static final class Machines {
        private final SeasonTables tables;
        private final Random random;
        private final State state;
        private final LoadRequest request = new LoadRequest();
        private final RigTimes times;
        private final WaterPoints points;
        private final MixSources sources;
        private final LoadCeiling ceilings;
        private final RigChoice choice;

        private int about;

        Machines(SeasonTables tables, Random random) {
            this.tables = tables;
            this.random = random;
            state = new State(tables);
            state.reset();
            FieldOrder order = new FieldOrder(tables);
            int[] all = IntStream.range(0, tables.fields().count()).toArray();
            int[][] lists = new int[tables.planters().count()][];
            int[] sizes = new int[tables.planters().count()];
            for (int p = 0; p < lists.length; p++) {
                lists[p] =
                        IntStream.of(all).filter(field -> random.nextInt(4) > 0).toArray();
                sizes[p] = lists[p].length;
            }
            order.take(lists, sizes);
            times = new RigTimes(tables, state.rigs());
            points = new WaterPoints(tables, state.draws());
            ceilings = new LoadCeiling(
                    tables, request, state.lots(), new FieldRun(tables.fields(), request, state.planters(), order));
            sources = sources(points);
            Quote[] quotes = Quote.ofAllRigs(tables, sources, day());
            choice = new RigChoice(tables, state, request, times, points, sources, ceilings, quotes);
        }

        private RigDay day() {
            return new RigDay(tables, state, request);
        }

        private MixSources sources(WaterPoints of) {
            return new MixSources(
                    tables, request, state, new Preparation(tables, state, request, times, of), times, of);
        }

        void move() {
            about = random.nextInt(tables.season().days() * Calendars.DAY_S);
            for (int r = 0; r < tables.rigs().count(); r++) {
                moveRig(r);
            }
            for (int draw = 0; draw < 3; draw++) {
                draw(random.nextInt(tables.water().count()));
            }
            int planter = random.nextInt(tables.planters().count());
            int place = random.nextInt(tables.fields().count());
            int need = Math.min(
                    tables.planters().hours(planter).next(near()),
                    tables.season().days() * Calendars.DAY_S - 1);
            request.ask(planter, place, tables.fields().recipe(place), need);
            state.planters()
                    .next(
                            planter,
                            state.planters().index(planter),
                            1L + random.nextInt((int) tables.fields().areaDm2(place)));
        }

        private void moveRig(int r) {
            state.rigs().moveTo(r, random.nextInt(tables.places().count()));
            state.rigs().freeFrom(r, near());
            state.rigs()
                    .water(
                            r,
                            tables.rigs().extractsAtWater(r)
                                    ? 0
                                    : (long) (tables.rigs().nurseMl(r) * random.nextInt(5) / 4.0));
            int mixed = random.nextInt(tables.recipes().count());
            long mixDm2 = random.nextInt(3) > 0 ? 0 : tables.rigs().nurseDm2(r, mixed) / 2;
            int useBy = near();
            state.rigs().mix(r, mixDm2, mixed, useBy, useBy);
            state.rigs().cleanDue(r, random.nextInt(2) == 1);
        }

        private void draw(int point) {
            int start = points.earliestDraw(
                    point, near(), 1_000L, 3_000_000L, tables.rigs().hours(0));
            if (start < Calendar.NEVER) {
                long ml = points.drawMl(point, start, 3_000_000L);
                state.draws().book(point, start, tables.water().drawS(point, ml), ml);
            }
            points.forget();
        }

        /** Within six hours of the moment that all is about. */
        private int near() {
            return Math.max(
                    0, Math.min(tables.season().days() * Calendars.DAY_S - 1, about - 21_600 + random.nextInt(43_200)));
        }

        @Nullable
        Quote chosen() {
            return choice.choose();
        }

        @Nullable
        Answer bestOfAll() {
            List<Answer> answers = answers(false);
            if (answers.stream().noneMatch(answer -> answer.start < request.tomorrowS())) {
                answers.addAll(answers(true));
            }
            return answers.stream()
                    .min(Comparator.comparingInt(Answer::start)
                            .thenComparingInt(Answer::metres)
                            .thenComparingInt(Answer::rig))
                    .orElse(null);
        }

        private List<Answer> answers(boolean oneBatch) {
            List<Answer> answers = new ArrayList<>();
            for (int r = 0; r < tables.rigs().count(); r++) {
                Quote quote = quote(r);
                long largest = ceilings.dm2(quote.source(), r);
                long batchDm2 = tables.recipes().areaOfCompost(tables.rigs().batchMg(r), request.recipe());
                long dm2 = oneBatch ? Math.min(largest, batchDm2) : largest;
                Delivery delivery = quote.ask(loadOf(dm2), dm2);
                if (dm2 > 0 && delivery.isInSeason()) {
                    answers.add(new Answer(r, sourceOf(r, quote), delivery.transferStart(), delivery.metres()));
                }
            }
            return answers;
        }

        private long loadOf(long mixDm2) {
            return tables.loadLimits().loadOf(request.planter(), request.recipe(), mixDm2);
        }

        /** Of a rig by itself: nothing that was found of a draw for another shortens its search. */
        private Quote quote(int rig) {
            MixSources own = sources(new WaterPoints(tables, state.draws()));
            Quote quote = new Quote(tables, rig, own.made(rig), day());
            long mix = state.rigs().mixDm2(rig);
            if (mix > 0 && state.rigs().mixRecipe(rig) == request.recipe()) {
                quote.begin(own.made(rig));
                long onBoard = Math.min(ceilings.dm2(own.made(rig), rig), mix);
                Delivery delivery = quote.ask(onBoard, onBoard);
                if (delivery.transferStart() < delivery.plantBy()) {
                    return quote;
                }
            }
            quote.begin(own.fresh(rig));
            return quote;
        }

        private MixSource sourceOf(int rig, Quote quote) {
            return quote.source().isFresh() ? sources.fresh(rig) : sources.made(rig);
        }
    }
}
