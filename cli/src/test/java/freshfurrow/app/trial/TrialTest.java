package freshfurrow.app.trial;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.SeasonCopy;
import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.planning.PlanningListener;
import freshfurrow.app.planning.PlanningOrder;
import freshfurrow.app.planning.SeasonPlanning;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.stop.StopSignal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fields of a plan put elsewhere. */
final class TrialTest {
    @TempDir
    private Path folder = Path.of("");

    private Trial trial;

    @BeforeEach
    void plan() {
        SeasonCopy season = SeasonCopy.of("first-season", folder);
        SeasonPlanning.plan(
                new PlanningOrder(season.given(), Optional.empty(), SeasonCopy.options(), false, false),
                StopSignal.untilTold(),
                PlanningListener.SILENT);
        trial = Trial.of(new GivenPlan(season.plans()), new SeasonOfPlan(Optional.of(folder), List.of()));
    }

    private List<String> list() {
        return trial.plan().planters().get("P1").fields();
    }

    private static Placing at(String field, int place) {
        return new Placing(field, Optional.of("P1"), Optional.empty(), OptionalInt.of(place));
    }

    private static Placing on(String field, String day) {
        return new Placing(field, Optional.empty(), Optional.of(LocalDate.parse(day)), OptionalInt.empty());
    }

    @Test
    void withNothingMovedThePlanIsTheSame() {
        Tried tried = trial.with(List.of());
        assertThat(tried.plan().score()).isEqualTo(trial.plan().score());
        assertThat(tried.plan().totals()).isEqualTo(trial.plan().totals());
        assertThat(tried.moved()).isEmpty();
    }

    @Test
    void aFieldAtAnotherPlaceGivesThePlanOfThatList() {
        List<String> other = new ArrayList<>(list());
        String last = other.remove(other.size() - 1);
        other.add(0, last);
        Plan expected = PlanRecorder.record(
                CompiledSeason.of(trial.season()),
                PlantingOrders.withExtract(List.of(other)),
                trial.plan().season());
        assertThat(trial.with(List.of(at(last, 0))).plan()).isEqualTo(expected);
    }

    @Test
    void aFieldPutOnADayStartsThereAsIfItWereFixed() {
        Tried tried = trial.with(List.of(on(list().get(0), "2027-04-26")));
        assertThat(tried.moved()).anySatisfy(moved -> assertThat(moved)
                .isEqualTo(new Moved(
                        list().get(0),
                        Optional.of(new Begun("P1", LocalDate.parse("2027-04-22"))),
                        Optional.of(new Begun("P1", LocalDate.parse("2027-04-26"))))));
    }

    @Test
    void severalFieldsAreMovedOneAfterTheOther() {
        Tried tried = trial.with(List.of(on(list().get(0), "2027-04-26"), on(list().get(1), "2027-05-03")));
        assertThat(tried.moved().stream()
                        .filter(moved -> moved.field().equals(list().get(1)))
                        .findFirst())
                .get()
                .extracting(moved -> moved.to().orElseThrow().day())
                .isEqualTo(LocalDate.parse("2027-05-03"));
    }

    @Test
    void whatCannotBeTriedIsRefused() {
        assertThat(Refusals.of(() -> trial.with(List.of(on("nowhere", "2027-04-26")))))
                .isInstanceOf(PlanRefusal.NoField.class);
        assertThat(Refusals.of(() -> trial.with(List.of(on("N80", "2027-04-20")))))
                .isEqualTo(new PlanRefusal.BeforeWindow(
                        "N80", LocalDate.parse("2027-04-20"), LocalDate.parse("2027-04-22")));
        assertThat(Refusals.of(() -> trial.with(
                        List.of(new Placing("N80", Optional.of("R1"), Optional.empty(), OptionalInt.empty())))))
                .isEqualTo(new PlanRefusal.NotForMachine("N80", "R1"));
    }
}
