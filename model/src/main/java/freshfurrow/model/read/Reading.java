package freshfurrow.model.read;

import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import freshfurrow.model.weather.SeasonWeather;
import java.util.List;
import java.util.Optional;

/** What came of reading a season: the season, or all that is wrong with its files. */
public sealed interface Reading {
    /**
     * A season without a problem.
     *
     * @param file name of the season file
     * @param sha256 of all files it was read from, one after the other, lower-case hex
     * @param weather the record that the season file names; empty when it names none
     * @param costs its prices, where its file names any; no plan depends on them
     */
    record Valid(Season season, String file, String sha256, Optional<SeasonWeather> weather, Optional<Costs> costs)
            implements Reading {}

    /** At least one problem; in the order of files and lines. */
    record Invalid(List<Problem> problems) implements Reading {
        public Invalid {
            problems = List.copyOf(problems);
        }
    }
}
