package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import java.util.Arrays;
import java.util.List;

/** Water points: where they are, how fast they give, how much a day, when. By index in the season's order. */
public final class WaterTable {
    private static final long NO_LIMIT = Long.MAX_VALUE;

    private final PlaceTable places;
    private final double[] drawSPerMl;
    private final int[] beforeDrawS;
    private final int[] hoses;
    private final long[] dailyLimitMl;
    private final long largestDailyLimitMl;
    private final Calendar[] hours;
    private final int[] place;
    private final int leastBeforeDrawS;
    private final double leastDrawSPerMl;
    /** By place. */
    private final int[] metresToWater;

    WaterTable(Season season, Calendars calendars, PlaceTable places) {
        this.places = places;
        List<WaterPoint> points = season.waterPoints();
        drawSPerMl = points.stream()
                .mapToDouble(point -> 1 / (point.flowLPerS() * Scale.ML_PER_L))
                .toArray();
        beforeDrawS = points.stream().mapToInt(WaterPoint::beforeDrawS).toArray();
        hoses = points.stream().mapToInt(WaterPoint::hoses).toArray();
        dailyLimitMl = points.stream()
                .mapToLong(point -> point.dailyLimitL().isPresent()
                        ? Scale.ml(point.dailyLimitL().getAsDouble())
                        : NO_LIMIT)
                .toArray();
        largestDailyLimitMl = Arrays.stream(dailyLimitMl).max().orElse(0);
        hours = points.stream()
                .map(point -> calendars.waterPoint(point.hours()))
                .toArray(Calendar[]::new);
        place = points.stream().mapToInt(point -> places.positionOf(point.id())).toArray();
        leastBeforeDrawS = Arrays.stream(beforeDrawS).min().orElse(0);
        leastDrawSPerMl = Arrays.stream(drawSPerMl).min().orElse(0);
        metresToWater = new int[places.count()];
        for (int from = 0; from < metresToWater.length; from++) {
            metresToWater[from] = Calendar.NEVER;
            for (int point : place) {
                metresToWater[from] = Math.min(metresToWater[from], places.metres(from, point));
            }
        }
    }

    public int count() {
        return place.length;
    }

    /** The place of a point. */
    public int place(int point) {
        return place[point];
    }

    /** To hook up, to treat the water and to draw so much, s. */
    public int drawS(int point, long ml) {
        return beforeDrawS[point] + (int) Math.ceil(ml * drawSPerMl[point]);
    }

    /** The same rounded down: no draw of so much takes less, s. */
    public int leastDrawS(int point, long ml) {
        return beforeDrawS[point] + (int) (ml * drawSPerMl[point]);
    }

    /** No point gives so much in less time, s. */
    public int leastDrawS(long ml) {
        return leastBeforeDrawS + (int) (ml * leastDrawSPerMl);
    }

    public int hoses(int point) {
        return hoses[point];
    }

    public boolean hasLimit(int point) {
        return dailyLimitMl[point] != NO_LIMIT;
    }

    /** What may be drawn on a date, mL; larger than any draw where there is no limit. */
    public long dailyLimitMl(int point) {
        return dailyLimitMl[point];
    }

    /** Of all points; 0 when there is none, mL. */
    public long largestDailyLimitMl() {
        return largestDailyLimitMl;
    }

    public Calendar hours(int point) {
        return hours[point];
    }

    /** To the nearest point, m; {@link Calendar#NEVER} when there is none. */
    public int metresToWater(int from) {
        return metresToWater[from];
    }

    /** The shortest way from one place to another by a point, m; {@link Calendar#NEVER} when there is none. */
    public int metresByWater(int from, int to) {
        int shortest = Calendar.NEVER;
        for (int point : place) {
            shortest = Math.min(shortest, places.metres(from, point) + places.metres(point, to));
        }
        return shortest;
    }
}
