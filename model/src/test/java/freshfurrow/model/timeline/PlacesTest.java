package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Season;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlacesTest {
    @Test
    void machinesMayStandWhereOnlyTheTableOfDistancesKnows() {
        Season atTheYard = new WorkedSeason().field("A", 3).season();
        Season atTheBarn = new WorkedSeason()
                .rig("R1", rig -> rig.at("barn"))
                .road("barn", "well", 1_000)
                .road("barn", "A", 3_000)
                .road("barn", "yard", 10)
                .road("barn", "shed", 10)
                .field("A", 3)
                .season();

        assertThat(atTheBarn.places()).doesNotContainKey("barn");
        assertThat(planned(atTheBarn).loads()).isEqualTo(planned(atTheYard).loads());
    }

    private static Plan planned(Season season) {
        return PlanRecorder.record(
                CompiledSeason.of(season),
                List.of(List.of("A")),
                new Plan.SeasonSource("", "", "", DisplayUnits.METRIC));
    }
}
