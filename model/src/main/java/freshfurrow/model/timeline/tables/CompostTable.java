package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendars;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;

/** Lots of compost in the order in which they become available. */
public final class CompostTable {
    private final long[] mg;
    private final int[] fromS;
    private final String[] ids;

    CompostTable(Season season) {
        List<CompostLot> lots = season.compost().stream()
                .sorted(Comparator.comparing(CompostLot::from))
                .toList();
        mg = lots.stream().mapToLong(lot -> Scale.mg(lot.massKg())).toArray();
        fromS = lots.stream()
                .mapToLong(lot -> ChronoUnit.DAYS.between(season.first(), lot.from()))
                .mapToInt(day -> (int) Math.max(0, Math.min(season.days(), day)) * Calendars.DAY_S)
                .toArray();
        ids = lots.stream().map(CompostLot::id).toArray(String[]::new);
    }

    public int count() {
        return mg.length;
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
