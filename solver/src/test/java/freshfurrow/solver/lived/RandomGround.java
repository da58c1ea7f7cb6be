package freshfurrow.solver.lived;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Invented springs in which it rains on so many days of a hundred, and poorly drained ground dries slowest. */
final class RandomGround {
    private RandomGround() {}

    static GroundRecord of(Season season, int rainyDaysOfHundred, long seed) {
        Random random = new Random(seed);
        Map<Drainage, List<WetDay>> wet = new EnumMap<>(Drainage.class);
        for (Drainage drainage : Drainage.values()) {
            wet.put(drainage, new ArrayList<>());
        }
        Map<Drainage, Integer> daysPerInch = Map.of(Drainage.WELL, 1, Drainage.MODERATE, 2, Drainage.POOR, 3);
        Map<Drainage, Integer> until = new EnumMap<>(Drainage.class);
        for (int day = 0; day < season.days(); day++) {
            int today = day;
            double depth = -Math.log(random.nextDouble()) / 3;
            if (random.nextInt(100) < rainyDaysOfHundred) {
                daysPerInch.forEach(
                        (drainage, days) -> until.merge(drainage, today + (int) Math.ceil(depth * days), Math::max));
            }
            wet.forEach((drainage, days) -> {
                if (today < until.getOrDefault(drainage, 0)) {
                    days.add(new WetDay(season.first().plusDays(today), 30, 25, 5));
                }
            });
        }
        return new RainHours(seed).in(new GroundRecord("invented", Map.of(), wet), 1, season.first());
    }
}
