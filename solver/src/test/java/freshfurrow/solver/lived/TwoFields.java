package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A season whose arithmetic can be done in the head: field A on poorly drained ground and B on well drained ground, 10 ha each, all
 * places at one spot, five days from a Monday on.
 *
 * <ul>
 *   <li>Planter, 07:00 to 19:00: 10 m x 2 m/s x 0.5 = 10 m2/s, 1 ha in 1,000 s. Tank 1,000 L at 200 L/ha: 5 ha in 5,000 s.
 *   <li>Rig, 06:00 to 20:00: 10 kg/ha, so a load of 5 ha is one batch of 50 kg, 900 s. Transfer 2 L/s: 1,000 L in 500 s.
 *   <li>Hold time 5 h.
 * </ul>
 *
 * So the first load is in the tank at 07:08:20 and would be planted by 08:31:40.
 */
final class TwoFields {
    static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    static final int HOUR_S = 3_600;

    private static final String TEXT = """
            season: {name: Two fields, first: 2027-04-19, last: 2027-04-23, timezone: UTC}
            hours: ["07:00/19:00"]
            recipes: {standard: {mix: 200 L/ha, compost: 10 kg/ha, hold: 5 h}}
            crops: {corn: {window: 2027-04-19/2027-04-19}}
            fields:
              A: {area: 10 ha, crop: corn, drainage: poor}
              B: {area: 10 ha, crop: corn, drainage: well}
            planters:
              P1: {width: 10 m, rowSpacing: 50 cm, speed: 7.2 km/h, fieldEfficiency: 0.5, tank: 1000 L, roadSpeed: 18 km/h,
                   fillSetup: 0 min, moveTime: 0 min, at: yard}
            rigs:
              R1: {drum: 160 L, batchCompost: 50 kg, batchTime: 15 min, cleanTime: 0 min, nurseTank: 2000 L,
                   transferRate: 120 L/min, roadSpeed: 36 km/h, at: yard, hours: ["06:00/20:00"]}
            waterPoints: {well: {flow: 300 L/min}}
            compost: {heap: {mass: 1000 kg, from: 2027-04-01}}
            places: {yard: {lat: 41, lon: -97}}
            travel: {matrix: roads.csv}
            """;

    private TwoFields() {}

    static Season season(Path folder) throws IOException {
        Files.writeString(folder.resolve("season.yaml"), TEXT);
        Files.writeString(
                folder.resolve("roads.csv"),
                "from,to,distance (km)\nA,B,0\nA,yard,0\nB,yard,0\nA,well,0\nB,well,0\nyard,well,0\n");
        Reading reading = SeasonFiles.read(folder, List.of());
        assertThat(reading)
                .as("%s", reading instanceof Reading.Invalid invalid ? invalid.problems() : "")
                .isInstanceOf(Reading.Valid.class);
        return ((Reading.Valid) reading).season();
    }

    /** Wet ground: for each class of drainage, the seconds of the days, counted from 0, from which on it is wet. */
    static GroundRecord wet(Map<Drainage, Map<Integer, Integer>> fromSByDay) {
        Map<Drainage, List<WetDay>> wet = new EnumMap<>(Drainage.class);
        fromSByDay.forEach((drainage, days) -> wet.put(
                drainage,
                days.entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(day -> new WetDay(FIRST.plusDays(day.getKey()), day.getValue(), 30, 25, 10))
                        .toList()));
        return new GroundRecord("by hand", Map.of(), wet);
    }
}
