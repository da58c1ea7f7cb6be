package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.safety.Hazard;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClockChanges;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class CautionsTest {
    private static final Cautions US = new Cautions(new Figures(DisplayUnits.US));
    private static final Cautions METRIC = new Cautions(new Figures(DisplayUnits.METRIC));

    @Test
    void aRigOverItsPayloadIsToldByHowMuch() {
        // 3,000 kg + 16 kg less 2,900 kg
        assertThat(METRIC.text(new Hazard.LoadedRig("R1", 3_000, 3_000, 16, OptionalDouble.of(2_900))))
                .startsWith(
                        "TOO HEAVY: R1 is 116 kg over its payload of 2,900 kg: 3,000 L of water weighs 3,000 kg, the day's"
                                + " compost 16 kg, together 3,016 kg.")
                .endsWith("Do not drive it like this.");
    }

    @Test
    void aRigWithinItsPayloadIsToldWhatIsNotCounted() {
        assertThat(METRIC.text(new Hazard.LoadedRig("R1", 3_000, 3_000, 0, OptionalDouble.of(3_500))))
                .isEqualTo(
                        "Weight of R1: 3,000 L of water weighs 3,000 kg; its payload is 3,500 kg. Tanks, drum, pump, fuel"
                                + " and people are extra: weigh the loaded rig.");
        assertThat(METRIC.text(new Hazard.LoadedRig("R1", 3_000, 3_000, 0, OptionalDouble.empty())))
                .contains("its payload is not given");
    }

    @Test
    void aBucketIsHeldAgainstTheRecommendedWeightLimit() {
        // 30 lb: 23 kg x 25 cm / 13.608 kg = 42.3 cm = 16.6 in (NIOSH Publication 94-110)
        Hazard bucket = new Hazard.Lifting(OptionalDouble.of(13.608), 100);
        assertThat(US.text(bucket))
                .isEqualTo(
                        "Compost: 51 lb is the recommended limit for an ideal lift (NIOSH 94-110), less for any other. Hold"
                                + " a full 30 lb bucket within 16 in of your ankles, closer if you bend or twist. Fill buckets half,"
                                + " or lift with two people.");
        assertThat(METRIC.text(bucket))
                .contains("23 kg is the recommended limit", "a full 13.6 kg bucket within 42 cm of your ankles");
        assertThat(US.text(new Hazard.Lifting(OptionalDouble.of(25), 100)))
                .startsWith("TOO HEAVY TO LIFT: a full 55.1 lb bucket is over");
    }

    @Test
    void everyHazardHasWords() {
        List<Hazard> all = List.of(
                new Hazard.LoadedRig("R1", 1, 1, 1, OptionalDouble.empty()),
                new Hazard.PartFilledTank(List.of()),
                new Hazard.OnTheRoad(),
                new Hazard.Backflow(List.of("well")),
                new Hazard.Lifting(OptionalDouble.empty(), 1),
                new Hazard.DustAndMist(),
                new Hazard.Pressure(),
                new Hazard.Spraying(),
                new Hazard.ClockChange(new ClockChanges.Change(
                        LocalDateTime.parse("2027-11-07T02:00"), LocalDateTime.parse("2027-11-07T01:00"))),
                new Hazard.OldMix(),
                new Hazard.FoodCrop());
        assertThat(all.stream().map(Object::getClass))
                .as("all there are")
                .containsExactlyInAnyOrder(Hazard.class.getPermittedSubclasses());
        assertThat(all.stream().map(US::text)).doesNotHaveDuplicates().noneMatch(String::isBlank);
    }
}
