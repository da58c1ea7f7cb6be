package freshfurrow.model.timeline;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;

/** Fields: area, recipe, window, late weight, drainage. By index in the season's order, which is their place as well. */
final class FieldTable {
    private final long[] areaDm2;
    private final int[] recipe;
    private final int[] openS;
    private final int[] lastDay;
    private final int[] lateWeight;
    private final byte[] drainage;
    private final long totalDm2;

    FieldTable(Season season, RecipeTable recipes) {
        List<Field> fields = season.fields();
        areaDm2 = fields.stream()
                .mapToLong(field -> Math.max(1, Scale.dm2(field.areaHa())))
                .toArray();
        totalDm2 = Arrays.stream(areaDm2).sum();
        recipe = fields.stream()
                .mapToInt(field -> recipes.indexOf(field.recipe()))
                .toArray();
        openS = fields.stream()
                .mapToInt(field -> Math.max(0, day(season, field.window().first()) * Calendars.DAY_S))
                .toArray();
        lastDay = fields.stream()
                .mapToInt(field -> day(season, field.window().last()))
                .toArray();
        lateWeight = fields.stream()
                .mapToInt(field -> (int) Math.round(field.lateWeight() * Scale.WEIGHT_ONE))
                .toArray();
        drainage = new byte[fields.size()];
        List<Drainage> drainages = List.of(Drainage.values());
        for (int f = 0; f < drainage.length; f++) {
            drainage[f] = (byte) drainages.indexOf(fields.get(f).drainage());
        }
    }

    private static int day(Season season, LocalDate date) {
        return (int) ChronoUnit.DAYS.between(season.first(), date);
    }

    int count() {
        return areaDm2.length;
    }

    /** At least 1, dm2. */
    long areaDm2(int field) {
        return areaDm2[field];
    }

    /** Of all fields, dm2. */
    long totalDm2() {
        return totalDm2;
    }

    /** Index of its recipe. */
    int recipe(int field) {
        return recipe[field];
    }

    /** When its window opens, 0 or more, s. */
    int openS(int field) {
        return openS[field];
    }

    /** Days from the season's first day to the last day of its window; may lie outside the season. */
    int lastDay(int field) {
        return lastDay[field];
    }

    /** Thousandths. */
    int lateWeight(int field) {
        return lateWeight[field];
    }

    /** Index of its {@link Drainage}. */
    int drainage(int field) {
        return drainage[field];
    }
}
