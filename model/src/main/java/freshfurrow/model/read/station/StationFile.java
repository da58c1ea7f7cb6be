package freshfurrow.model.read.station;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import freshfurrow.model.weather.record.WeatherRecord;
import java.util.List;
import java.util.Optional;

/** A file of daily weather in one of the forms that are read: a table with a header row, or a GHCN-Daily file of one station. */
public final class StationFile {
    /** Largest file of daily weather, MiB: a century of a station with all its elements. */
    public static final int LARGEST_MIB = 32;

    private StationFile() {}

    /**
     * Reads a station's file.
     *
     * @param problems takes all that is wrong, one problem for each kind of mistake
     * @return the record; empty when anything is wrong
     */
    public static Optional<WeatherRecord> read(TextFile file, List<FileProblem> problems) {
        Observations observations = new Observations(file.name());
        try {
            if (GhcnDaily.looksLikeIt(file)) {
                GhcnDaily.read(file, observations);
            } else {
                StationTable.read(file, observations);
            }
        } catch (FileProblem e) {
            problems.add(e);
            return Optional.empty();
        }
        List<FileProblem> mistakes = observations.mistakes();
        problems.addAll(mistakes);
        if (!mistakes.isEmpty()) {
            return Optional.empty();
        }
        Optional<WeatherRecord> record = observations.record();
        if (record.isEmpty()) {
            problems.add(new FileProblem(
                    new Place(file.name(), 1, ""), "holds no day's weather", "write a row for each day"));
        }
        return record;
    }
}
