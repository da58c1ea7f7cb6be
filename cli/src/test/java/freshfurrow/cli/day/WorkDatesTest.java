package freshfurrow.cli.day;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class WorkDatesTest {
    private static final Plan PLAN = ExamplePlan.plan();

    @Test
    void theDatesOfAPlanGoFromItsFirstActivityToItsLast() {
        assertThat(WorkDates.of(PLAN)).contains(new WorkDates(LocalDate.of(2027, 4, 19), LocalDate.of(2027, 4, 21)));
    }

    @Test
    void aPlanWithoutWorkHasNoDates() {
        Plan idle = new Plan(
                PLAN.season(),
                PLAN.score(),
                PLAN.totals(),
                Map.of(),
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of());
        assertThat(WorkDates.of(idle)).isEmpty();
    }
}
