package freshfurrow.model.timeline.tables;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.season.Field;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * Fields: area, recipe, window, weights, ground. By index in the season's order, which is their place as well. Where fields may be planted
 * without extract, a list names one that is to be planted so by its index plus the number of fields.
 */
public final class FieldTable {
    private static final int ANY_DAY = Integer.MIN_VALUE;

    private final long[] areaDm2;
    private final int[] recipe;
    private final int[] openS;
    private final int[] lastDay;
    private final int[] fixedDay;
    private final int fixedDays;
    private final int[] lateWeight;
    private final int[] extractWeight;
    private final boolean[] mayGoWithout;
    private final boolean mayAnyGoWithout;
    private final short[] ground;
    /** Those that differ, in the order of the fields. */
    private final List<FieldGround> grounds;
    /** By ground, when it is not too wet. */
    private final Calendar[] openGround;
    /** Places from this one on are open all season: fields too, where no rain closes any. */
    private final int firstAlwaysOpen;

    private final long totalDm2;

    FieldTable(Season season, Calendars calendars, RecipeTable recipes) {
        List<Field> fields = season.fields();
        areaDm2 = fields.stream()
                .mapToLong(field -> Math.max(1, Scale.dm2(field.areaHa())))
                .toArray();
        totalDm2 = Arrays.stream(areaDm2).sum();
        recipe = fields.stream()
                .mapToInt(field -> recipes.indexOf(field.recipe()))
                .toArray();
        openS = fields.stream()
                .mapToInt(field -> Math.max(0, day(season, field.opens()) * Calendars.DAY_S))
                .toArray();
        lastDay = fields.stream()
                .mapToInt(field -> day(season, field.window().last()))
                .toArray();
        fixedDay = fields.stream()
                .mapToInt(field -> field.fixed().on().map(on -> day(season, on)).orElse(ANY_DAY))
                .toArray();
        fixedDays = (int) Arrays.stream(fixedDay).filter(day -> day != ANY_DAY).count();
        lateWeight = fields.stream()
                .mapToInt(field -> (int) Math.round(field.lateWeight() * Scale.WEIGHT_ONE))
                .toArray();
        extractWeight = fields.stream()
                .mapToInt(field -> (int) Math.round(field.extractWeight() * Scale.WEIGHT_ONE))
                .toArray();
        mayGoWithout = new boolean[fields.size()];
        boolean any = false;
        for (int f = 0; f < mayGoWithout.length; f++) {
            mayGoWithout[f] = season.mayGoWithout(fields.get(f));
            any |= mayGoWithout[f];
        }
        mayAnyGoWithout = any;
        grounds = fields.stream().map(Field::ground).distinct().toList();
        ground = new short[fields.size()];
        for (int f = 0; f < ground.length; f++) {
            ground[f] = (short) grounds.indexOf(fields.get(f).ground());
        }
        openGround = grounds.stream().map(calendars::open).toArray(Calendar[]::new);
        boolean neverWet =
                grounds.stream().allMatch(its -> calendars.closures(its).isEmpty());
        firstAlwaysOpen = neverWet ? 0 : fields.size();
    }

    private static int day(Season season, LocalDate date) {
        return (int) ChronoUnit.DAYS.between(season.first(), date);
    }

    public int count() {
        return areaDm2.length;
    }

    /** At least 1, dm2. */
    public long areaDm2(int field) {
        return areaDm2[field];
    }

    /** Of all fields, dm2. */
    public long totalDm2() {
        return totalDm2;
    }

    /** Index of its recipe. */
    public int recipe(int field) {
        return recipe[field];
    }

    /** The day that a field is fixed to be begun on; empty when that is not so. */
    public OptionalInt fixedDay(int field) {
        return fixedDay[field] == ANY_DAY ? OptionalInt.empty() : OptionalInt.of(fixedDay[field]);
    }

    /** Whether a field that is begun at {@code s} is begun on the day that it is fixed to. */
    public boolean isFixedTo(int field, int s) {
        return fixedDay[field] == s / Calendars.DAY_S;
    }

    /** How many fields are fixed to a day. */
    public int fixedDays() {
        return fixedDays;
    }

    /** When it may be begun, 0 or more, s. */
    public int openS(int field) {
        return openS[field];
    }

    /** Days from the season's first day to the last day of its window; may lie outside the season. */
    public int lastDay(int field) {
        return lastDay[field];
    }

    /** Thousandths. */
    public int lateWeight(int field) {
        return lateWeight[field];
    }

    /** What it counts to plant it without extract, thousandths. */
    public int extractWeight(int field) {
        return extractWeight[field];
    }

    /** Whether any field may be planted without extract. */
    public boolean mayGoWithout() {
        return mayAnyGoWithout;
    }

    /** Whether a field may be planted without extract. */
    public boolean mayGoWithout(int field) {
        return mayGoWithout[field];
    }

    /** Of an entry of a list: the field that it names. */
    public int named(int entry) {
        return entry < areaDm2.length ? entry : entry - areaDm2.length;
    }

    /** The entry of a list by which a field is to be planted without extract. */
    public int without(int field) {
        return field + areaDm2.length;
    }

    /** Of an entry of a list: whether its field is to be planted without extract. */
    public boolean isWithout(int entry) {
        return entry >= areaDm2.length;
    }

    /**
     * The first moment at or after {@code t} at which a machine may set off for a place, so that it drives within its hours and comes to
     * no field that is too wet then; {@link Calendar#NEVER} when there is none.
     */
    public int setOff(Calendar hours, int place, int t, int driveS) {
        int s = hours.earliest(t, driveS);
        return isOpen(place, s + driveS) ? s : setOffOnceOpen(hours, place, s, driveS);
    }

    private int setOffOnceOpen(Calendar hours, int place, int t, int driveS) {
        Calendar open = openGround[ground[place]];
        int s = t;
        while (s < NEVER && !open.holds(s + driveS)) {
            int next = open.next(s + driveS);
            s = next >= NEVER ? NEVER : hours.earliest(next - driveS, driveS);
        }
        return s;
    }

    /** Whether a place is not too wet to be driven to. */
    private boolean isOpen(int place, int t) {
        return place >= firstAlwaysOpen || openGround[ground[place]].holds(t);
    }

    /** The last moment at or before {@code t} at which a machine may be at a place after such a drive; -1 when there is none. */
    public int latestArrival(Calendar hours, int place, int t, int driveS) {
        int arrival = hours.latest(t, driveS);
        while (arrival >= 0 && !isOpen(place, arrival)) {
            int lastOpen = openGround[ground[place]].latest(arrival, 1) - 1;
            arrival = lastOpen < 0 ? -1 : hours.latest(lastOpen, driveS);
        }
        return arrival;
    }

    /** Index of its ground: the same for fields that are always too wet at the same times. */
    public int ground(int field) {
        return ground[field];
    }

    /** How many grounds differ. */
    public int groundCount() {
        return grounds.size();
    }

    /** A ground by its index. */
    FieldGround groundOf(int index) {
        return grounds.get(index);
    }
}
