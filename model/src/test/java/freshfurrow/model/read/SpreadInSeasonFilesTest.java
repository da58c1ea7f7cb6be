package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.season.TimeSpread.Breakdowns;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadInSeasonFilesTest {
    private static final String AFTER = "goals:";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void withoutTheKeyNothingVaries() {
        assertThat(WrittenSeason.in(folder).season().spread()).isEmpty();
    }

    @Test
    void whatIsLeftOutIsTheUsual() {
        assertThat(spread("{}")).contains(TimeSpread.USUAL);
    }

    @Test
    void whatIsWrittenCounts() {
        assertThat(spread("{batchTime: 0.2, transfer: 0, drive: 0.3, planting: 0.05, "
                        + "breakdowns: {between: 60 h, down: 45 min}}"))
                .contains(new TimeSpread(0.2, 0, 0.3, 0.05, Optional.of(new Breakdowns(60 * 3_600, 45 * 60))));
    }

    @Test
    void noneBreakDownWhereThatIsSaid() {
        assertThat(spread("{breakdowns: none}").orElseThrow().breakdowns()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {batchTime: 1.5}                    | spread.batchTime: 1.5 is out of range; use a coefficient of variation from 0 to 1
            {batchTime: 2 min}                  | spread.batchTime: '2 min' is not a plain number; write a number like 0.15
            {breakdowns: seldom}                | spread.breakdowns: 'seldom' is neither times nor none; write breakdowns: {between: 80 h, down: 90 min}, or none
            {breakdowns: {between: 60}}         | spread.breakdowns.between: 60 has no unit
            {breakdowns: {between: 10 min}}     | spread.breakdowns.between: 10 min is out of range; use 1 to 10,000 h
            {breakdowns: {down: 20 d}}          | spread.breakdowns.down: 20 d is out of range; use 1 min to 10 d
            {breakdowns: {every: 60 h}}         | spread.breakdowns.every: is not a known key
            {batch: 0.1}                        | spread.batch: is not a known key; did you mean batchTime?
            0.1                                 | spread: is '0.1' where keys with values belong; write key: value pairs here
            """)
    void whatCannotBeIsRefusedWithItsPlace(String written, String told) {
        assertThat(WrittenSeason.in(folder)
                        .with(AFTER, "spread: " + written + "\n" + AFTER)
                        .problems())
                .singleElement()
                .asString()
                .contains(told);
    }

    private Optional<TimeSpread> spread(String written) {
        return WrittenSeason.in(folder)
                .with(AFTER, "spread: " + written + "\n" + AFTER)
                .season()
                .spread();
    }
}
