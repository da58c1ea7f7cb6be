package freshfurrow.cli.e2e;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Season files written for a test, with the usual figures of drum, batch, rates and bucket: common practice, no source. */
final class SeasonOnDisk {
    private static final String SEASON = """
            season: {name: Test farm, first: 2027-04-19, last: 2027-05-08, timezone: America/Chicago}
            hours: ["07:00/12:00", "12:30/20:00"]
            closed: [SUNDAY]
            places: {yard: {lat: 41.0, lon: -97.0}}
            recipes:
              standard: {mix: 20 gal/ac, compost: 2 lb/ac, hold: 5 h}
            crops:
              corn: {window: 2027-04-20/2027-05-01}
            fields:
              N40: {name: North, area: 42 ac, lat: 41.02, lon: -97.01, crop: corn}
              S80: {name: South, area: 78 ac, lat: 40.98, lon: -97.02, crop: corn}
              E20: {name: East, area: 21 ac, lat: 41.00, lon: -96.97, crop: corn}
              W60: {name: West, area: 63 ac, lat: 41.01, lon: -97.05, crop: corn}
            planters:
              P1: {width: 40 ft, rowSpacing: 30 in, speed: 5 mph, fieldEfficiency: 0.65, tank: 600 gal, roadSpeed: 15 mph,
                   fillSetup: 6 min, moveTime: 12 min, at: yard}
            rigs:
              R1: {drum: 40 gal, batchCompost: 30 lb, batchTime: 15 min, cleanTime: 3 min, nurseTank: 1200 gal,
                   transferRate: 60 gal/min, roadSpeed: 35 mph, payload: 12000 lb, bucket: 30 lb, extractAt: field, at: yard}
            waterPoints:
              well: {lat: 41.01, lon: -97.02, flow: 40 gal/min, hoses: 1}
            compost:
              windrow: {mass: 4000 lb, from: 2027-04-01}
            """;

    private SeasonOnDisk() {}

    /** Writes a season of four fields and returns its folder. */
    static Path in(Path folder) throws IOException {
        Files.writeString(folder.resolve("season.yaml"), SEASON);
        return folder;
    }

    /** Writes a season whose water point has no flow and whose crop is unknown. */
    static Path brokenIn(Path folder) throws IOException {
        Files.writeString(
                folder.resolve("season.yaml"),
                SEASON.replace("flow: 40 gal/min, ", "").replace("corn: {window", "maize: {window"));
        return folder;
    }
}
