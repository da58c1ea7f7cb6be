package freshfurrow.model.timeline.rigs;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What has been found of one draw shortens the search for the next, and changes nothing of what is found. */
class EarliestDrawTest {
    @Property(tries = 500)
    void isTheSameWhateverWasAskedBefore(@ForAll long seed) {
        SeasonTables tables = SeasonTables.of(RandomSeasons.season(seed));
        Random random = new Random(seed);
        State state = new State(tables);
        state.reset();
        WaterPoints asked = new WaterPoints(tables, state.draws());
        int about = random.nextInt(tables.season().days() * Calendars.DAY_S);
        for (int question = 0; question < 100; question++) {
            int point = random.nextInt(tables.water().count());
            int t = about + random.nextInt(4 * 3600);
            long lackMl = 1L + random.nextInt(2_000_000);
            long roomMl = lackMl + random.nextInt(2_000_000);
            Calendar hours = tables.rigs().hours(random.nextInt(tables.rigs().count()));
            WaterPoints fresh = new WaterPoints(tables, state.draws());

            int found = asked.earliestDraw(point, t, lackMl, roomMl, hours);

            assertThat(found).isEqualTo(fresh.earliestDraw(point, t, lackMl, roomMl, hours));
            assertThat(asked.soonestDraw(point, t, lackMl, roomMl, hours)).isLessThanOrEqualTo(found);
            if (found < Calendar.NEVER) {
                long ml = asked.drawMl(point, found, roomMl);
                int drawS = tables.water().drawS(point, ml);
                assertThat(ml).isBetween(lackMl, roomMl);
                assertThat(asked.shortestDrawS(point, lackMl, roomMl))
                        .isBetween(tables.water().leastDrawS(lackMl), drawS);
                if (random.nextInt(6) == 0) {
                    state.draws().book(point, found, drawS, ml);
                    asked.forget();
                }
            }
        }
    }
}
