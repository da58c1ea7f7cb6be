package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * An invented season on disk that is right in all its parts, to be changed in one of them. Its rates, drum and batch are the usual ones:
 * common practice, no source.
 */
record WrittenSeason(Path folder, String text) {
    static final String RIGHT = """
            season: {name: Example, first: 2027-04-19, last: 2027-06-05, timezone: America/Chicago}
            hours: ["07:00/12:00", "12:30/20:00"]
            closed: [SUNDAY, 2027-05-31]
            places:
              yard: {lat: 41.0, lon: -97.0}
            recipes:
              standard: {mix: 20 gal/ac, compost: 2 lb/ac, hold: 5 h}
            crops:
              corn: {window: 2027-04-20/2027-05-12, lateWeight: 1.0}
            fields:
              N40: {name: North forty, area: 40 ac, lat: 41.02, lon: -97.01, crop: corn}
              S80: {area: 80 ac, lat: 40.98, lon: -97.0, crop: corn}
            planters:
              P1:
                width: 40 ft
                rowSpacing: 30 in
                speed: 5 mph
                fieldEfficiency: 0.65
                tank: 600 gal
                roadSpeed: 15 mph
                fillSetup: 6 min
                moveTime: 12 min
                at: yard
            rigs:
              R1:
                drum: 40 gal
                batchCompost: 30 lb
                batchTime: 15 min
                cleanTime: 3 min
                nurseTank: 1200 gal
                transferRate: 60 gal/min
                roadSpeed: 35 mph
                payload: 12000 lb
                extractAt: field
                at: yard
            waterPoints:
              well: {lat: 41.01, lon: -97.02, flow: 40 gal/min, hoses: 1, dailyLimit: 9000 gal, treatment: 0 min, hookUp: 2 min}
            compost:
              windrow: {mass: 4000 lb, from: 2027-04-01}
            travel: {roadFactor: 1.3}
            drying: {ignoreBelow: 0.1 in, well: 1 d/in, moderate: 2 d/in, poor: 3 d/in}
            rain:
              - {date: 2027-05-03, from: "14:00", amount: 0.8 in}
            goals: {refill: 30 min, waterTrip: 20 min}
            """;

    static WrittenSeason in(Path folder) {
        return new WrittenSeason(folder, RIGHT);
    }

    /** The season with the one occurrence of a text replaced. */
    WrittenSeason with(String before, String after) {
        assertThat(text.split(java.util.regex.Pattern.quote(before), -1))
                .as("'%s' stands once in the season", before)
                .hasSize(2);
        return new WrittenSeason(folder, text.replace(before, after));
    }

    /** The season with its map of fields replaced by the name of a file that holds the text. */
    WrittenSeason withFields(String file, String content) {
        write(file, content);
        int start = text.indexOf("fields:");
        return new WrittenSeason(
                folder,
                text.substring(0, start) + "fields: " + file + "\n" + text.substring(text.indexOf("planters:")));
    }

    WrittenSeason withFile(String file, String content) {
        write(file, content);
        return this;
    }

    Reading read(String... variants) {
        write("season.yaml", text);
        return SeasonFiles.read(
                folder, List.of(variants).stream().map(folder::resolve).toList());
    }

    Season season(String... variants) {
        Reading reading = read(variants);
        assertThat(problems(reading)).isEmpty();
        return ((Reading.Valid) reading).season();
    }

    /** The lines that a reader of messages gets; none when the season is right. */
    List<String> problems(String... variants) {
        return problems(read(variants));
    }

    static List<String> problems(Reading reading) {
        return reading instanceof Reading.Invalid invalid
                ? invalid.problems().stream().map(Problem::toString).toList()
                : List.of();
    }

    private void write(String file, String content) {
        try {
            Files.writeString(folder.resolve(file), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
