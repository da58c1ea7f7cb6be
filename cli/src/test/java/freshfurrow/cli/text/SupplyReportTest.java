package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import freshfurrow.model.supply.SpringUse;
import freshfurrow.model.supply.SupplyNeeds;
import freshfurrow.model.supply.SureShare;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SupplyReportTest {
    private static final double POUND_KG = 1 / MassUnit.POUND.fromKilograms(1);
    private static final Season SEASON = season();

    @Test
    void compostToPlantAllWithExtractStandsBesideWhatIsUsed() {
        assertThat(lines(untreated(SEASON), 500))
                .contains(
                        "To plant all with extract takes 500 lb of compost, 200 lb more than all lots; 250 lb are used if your lots"
                                + " stay as they are and planting may go on without.");
        assertThat(lines(untreated(SEASON), 300))
                .contains(
                        "To plant all with extract takes 300 lb of compost; 250 lb are used if your lots stay as they are and"
                                + " planting may go on without.");
    }

    @Test
    void inMetricUnitsItIsInKilograms() {
        Season metric = untreated(SEASON).change().units(DisplayUnits.METRIC).season();

        assertThat(lines(metric, 500))
                .anyMatch(line -> line.startsWith("To plant all with extract takes 227 kg of compost, 90.7 kg more"));
    }

    @Test
    void whereNothingGoesWithoutNothingIsSaidOfIt() {
        assertThat(lines(SEASON, 500)).noneMatch(line -> line.contains("extract"));
    }

    private static List<String> lines(Season season, double neededLb) {
        SupplyNeeds needs =
                SupplyNeeds.of(season, List.of(use(season, neededLb)), List.of(use(season, 250)), new SureShare(0.8));
        return SupplyReport.lines(season, needs, "1 spring", 1, 0.8, 0);
    }

    private static SpringUse use(Season season, double lb) {
        double[] compostKg = new double[season.days()];
        compostKg[3] = lb * POUND_KG;
        return new SpringUse(compostKg, new double[season.waterPoints().size()][season.days()]);
    }

    private static Season untreated(Season season) {
        return season.change()
                .goals(season.goals().withUntreatedDays(OptionalDouble.of(4)))
                .season();
    }

    /** 300 lb of compost from the first day on. */
    private static Season season() {
        Season spring = ((Reading.Valid) SeasonFiles.read(Path.of("../scenarios/spring"), List.of())).season();
        return spring.change()
                .compost(List.of(new CompostLot("heap", 300 * POUND_KG, spring.first())))
                .season();
    }
}
