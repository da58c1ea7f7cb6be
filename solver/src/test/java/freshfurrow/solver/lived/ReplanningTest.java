package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReplanningTest {
    private static final Season SEASON =
            ((Reading.Valid) SeasonFiles.read(Path.of("../scenarios/spring"), List.of())).season();

    /** Searched for, so better than what quick rules make of the season; no move is tried when it is planned again. */
    @Test
    void listsInForceAreKeptWhereNothingBetterIsFound() {
        CompiledSeason dry = SpringPlan.dry(SEASON);
        SpringPlan first = SpringPlan.first(dry);
        SpringPlan inForce = first.improved(2_000, 1, 2);

        PlantingOrders again = new Replanning(7, 0, 1).orders(SEASON, inForce.orders());

        assertThat(inForce.score()).isGreaterThan(first.score());
        assertThat(again).isEqualTo(inForce.orders());
    }
}
