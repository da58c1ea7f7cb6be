package freshfurrow.cli.day;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.WaitReason;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

final class MachineDayTest {
    @Test
    void daysComeByDateAndRigsBeforePlanters() {
        assertThat(MachineDay.allOf(ExamplePlan.plan()).stream()
                        .map(day -> day.machine().id() + " " + day.date()))
                .containsExactly("R1 2027-04-19", "R1 2027-04-20", "P1 2027-04-20", "R1 2027-04-21", "P1 2027-04-21");
    }

    @Test
    void aDayGoesFromItsFirstWorkToItsLastAndWaitsAreNone() {
        PlannedMachine planter = planter(
                new Activity.Wait(at(MONDAY, "06:00"), at(TUESDAY, "07:00"), "N40", WaitReason.WET),
                new Activity.Fill(at(TUESDAY, "07:00"), at(TUESDAY, "07:16"), "N40", "L0001"),
                new Activity.Wait(at(TUESDAY, "07:16"), at(WEDNESDAY, "07:00"), "N40", WaitReason.RIG));
        MachineDay tuesday = day(planter, TUESDAY);
        assertThat(tuesday.activities()).hasSize(3);
        assertThat(tuesday.start()).contains(at(TUESDAY, "07:00"));
        assertThat(tuesday.end()).contains(at(TUESDAY, "07:16"));
        assertThat(day(planter, MONDAY).start()).isEmpty();
    }

    @Test
    void workOverMidnightBelongsToBothDays() {
        PlannedMachine planter = planter(
                new Activity.Plant(at(MONDAY, "23:00"), at(TUESDAY, "01:00"), "N40", "L0001", 1),
                new Activity.Plant(at(TUESDAY, "22:00"), WEDNESDAY.atStartOfDay(), "N40", "L0001", 1));
        assertThat(day(planter, MONDAY).end()).contains(TUESDAY.atStartOfDay());
        assertThat(day(planter, TUESDAY).start()).contains(TUESDAY.atStartOfDay());
        assertThat(day(planter, TUESDAY).end()).contains(WEDNESDAY.atStartOfDay());
        assertThat(MachineDay.byDate(planter)).doesNotContainKey(WEDNESDAY);
    }

    @Test
    void aMachineWithNothingToDoForLongWaitsWhereItsLastWorkEnded() {
        // R1 draws until 16:40 on Monday and drives at 6:35 on Tuesday; after its last work it stays to the end
        List<Activity> rig = PlannedMachine.of(ExamplePlan.plan()).get(0).activities();
        assertThat(rig)
                .contains(new Activity.Wait(at(MONDAY, "16:40"), at(TUESDAY, "06:35"), "well", WaitReason.HOURS))
                .endsWith(new Activity.Wait(
                        at(WEDNESDAY, "07:23"), WEDNESDAY.plusDays(2).atStartOfDay(), "S80", WaitReason.HOURS));
        assertThat(rig.stream().filter(Activity.Wait.class::isInstance)).hasSize(3);
    }

    private static MachineDay day(PlannedMachine machine, LocalDate date) {
        return Objects.requireNonNull(MachineDay.byDate(machine).get(date));
    }

    private static PlannedMachine planter(Activity... activities) {
        return new PlannedMachine(PlannedMachine.Kind.PLANTER, "P1", List.of(activities));
    }
}
