package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
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
    private record Answer(int rig, Quote.Source source, int start, int metres) {}

    @Property(tries = 1_000)
    void choosesAsIfEveryRigWereAsked(@ForAll long seed) {
        Machines machines = new Machines(CompiledSeason.of(withTwins(RandomSeasons.season(seed))), new Random(seed));

        for (int request = 0; request < 20; request++) {
            machines.move();

            Answer best = machines.bestOfAll();
            Quote chosen = machines.chosen();
            if (best == null) {
                assertThat(chosen).isNull();
            } else {
                assertThat(chosen).isNotNull();
                assertThat(chosen.rig).isEqualTo(best.rig);
                assertThat(chosen.source).isEqualTo(best.source);
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

    /** Machines anywhere in the middle of a season, and a planter that asks for a fill. */
    private static final class Machines {
        private final CompiledSeason season;
        private final Random random;
        private final State state;
        private final WaterPoints points;
        private final CompostLots lots;
        private final LoadSizer sizer;
        private final RigChoice choice;

        private int about;
        private int planter;
        private int place;
        private int recipe;
        private int need;

        Machines(CompiledSeason season, Random random) {
            this.season = season;
            this.random = random;
            state = new State(season);
            state.reset();
            points = new WaterPoints(season, state);
            lots = new CompostLots(season, state);
            FieldOrder order = new FieldOrder(season);
            int[] all = IntStream.range(0, season.fieldCount()).toArray();
            int[][] lists = new int[season.planterCount()][];
            int[] sizes = new int[season.planterCount()];
            for (int p = 0; p < lists.length; p++) {
                lists[p] =
                        IntStream.of(all).filter(field -> random.nextInt(4) > 0).toArray();
                sizes[p] = lists[p].length;
            }
            order.take(lists, sizes);
            sizer = new LoadSizer(season, state, lots, new Planting(season, state, order));
            choice = new RigChoice(season, state, points, lots, sizer);
        }

        void move() {
            about = random.nextInt(season.days * Calendars.DAY_S);
            for (int r = 0; r < season.rigs.count(); r++) {
                moveRig(r);
            }
            for (int draw = 0; draw < 3; draw++) {
                draw(random.nextInt(season.water.count()));
            }
            planter = random.nextInt(season.planterCount());
            place = random.nextInt(season.fieldCount());
            recipe = season.fields.recipe(place);
            need = Math.min(season.planters.hours(planter).next(near()), season.days * Calendars.DAY_S - 1);
            state.v[state.planter(planter) + State.LEFT_DM2] = 1L + random.nextInt((int) season.fields.areaDm2(place));
        }

        private void moveRig(int r) {
            int base = state.rig(r);
            state.v[base + State.RIG_PLACE] = random.nextInt(season.places.count());
            state.v[base + State.FREE] = near();
            state.v[base + State.WATER_ML] =
                    season.rigs.extractsAtWater(r) ? 0 : (long) (season.rigs.nurseMl(r) * random.nextInt(5) / 4.0);
            int mixed = random.nextInt(season.recipes.count());
            state.v[base + State.MIX_DM2] = random.nextInt(3) > 0 ? 0 : season.rigs.nurseDm2(r, mixed) / 2;
            state.v[base + State.MIX_RECIPE] = mixed;
            state.v[base + State.MIX_DEADLINE] = near();
            state.v[base + State.CLEAN_DUE] = random.nextInt(2);
        }

        private void draw(int point) {
            int start = points.earliestDraw(point, near(), 1_000L, 3_000_000L, season.rigs.hours(0));
            if (start < Calendar.NEVER) {
                points.book(point, start, points.drawS, points.drawMl);
            }
            points.forget();
        }

        /** Within six hours of the moment that all is about. */
        private int near() {
            return Math.max(0, Math.min(season.days * Calendars.DAY_S - 1, about - 21_600 + random.nextInt(43_200)));
        }

        @Nullable
        Quote chosen() {
            return choice.choose(planter, place, recipe, need);
        }

        @Nullable
        Answer bestOfAll() {
            List<Answer> answers = answers(false);
            int tomorrow = (need / Calendars.DAY_S + 1) * Calendars.DAY_S;
            if (answers.stream().noneMatch(answer -> answer.start < tomorrow)) {
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
            for (int r = 0; r < season.rigs.count(); r++) {
                Quote quote = new Quote(season, state, new WaterPoints(season, state), lots, r);
                quote.request(planter, place, recipe, need);
                quote.source = source(quote);
                long largest = sizer.ceiling(quote);
                long dm2 = oneBatch
                        ? Math.min(largest, season.recipes.areaOfCompost(season.rigs.batchMg(r), recipe))
                        : largest;
                if (dm2 > 0 && quote.ask(sizer.loadOf(quote, dm2), dm2) < Calendar.NEVER) {
                    answers.add(new Answer(r, quote.source, quote.transferStart, quote.metres));
                }
            }
            return answers;
        }

        private Quote.Source source(Quote quote) {
            int base = state.rig(quote.rig);
            long mix = state.v[base + State.MIX_DM2];
            if (mix > 0 && state.v[base + State.MIX_RECIPE] == recipe) {
                quote.source = season.rigs.extractsAtWater(quote.rig) ? Quote.Source.ON_BOARD : Quote.Source.BEGUN;
                long onBoard = Math.min(sizer.ceiling(quote), mix);
                if (quote.ask(onBoard, onBoard) < quote.deadline) {
                    return quote.source;
                }
            }
            return RigChoice.anew(season, quote.rig);
        }
    }
}
