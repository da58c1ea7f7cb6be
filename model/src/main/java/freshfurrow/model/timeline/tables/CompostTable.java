package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendars;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Lots of compost in the order in which they become available. */
public final class CompostTable {
    private final long[] mg;
    private final int[] fromS;
    private final String[] ids;
    private final boolean fetched;
    /** Where each lies, where it is to be fetched. */
    private final int[] place;

    CompostTable(Season season, PlaceTable places) {
        List<CompostLot> lots = season.compost().stream()
                .sorted(Comparator.comparing(CompostLot::from))
                .toList();
        mg = lots.stream().mapToLong(lot -> Scale.mg(lot.massKg())).toArray();
        fromS = lots.stream()
                .mapToLong(lot -> ChronoUnit.DAYS.between(season.first(), lot.from()))
                .mapToInt(day -> (int) Math.max(0, Math.min(season.days(), day)) * Calendars.DAY_S)
                .toArray();
        ids = lots.stream().map(CompostLot::id).toArray(String[]::new);
        fetched = season.saysWhereCompostLies();
        place = lots.stream()
                .flatMap(lot -> lot.at().stream())
                .mapToInt(places::positionOf)
                .toArray();
    }

    public int count() {
        return mg.length;
    }

    /** Whether rigs fetch compost where it lies; else they have it wherever they make batches. */
    public boolean isFetched() {
        return fetched;
    }

    /** Where a lot lies; asked only where compost is fetched. */
    public int place(int lot) {
        return place[lot];
    }

    public long totalMg() {
        return Arrays.stream(mg).sum();
    }

    public long mg(int lot) {
        return mg[lot];
    }

    /** When it becomes available, 0 or more, s. */
    public int fromS(int lot) {
        return fromS[lot];
    }

    public String id(int lot) {
        return ids[lot];
    }
}
