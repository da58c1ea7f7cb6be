package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.threads.Workers;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SharedPlansTest {
    private static final Path FOLDER = Path.of("../scenarios/spring");
    private static final Season ONE_RIG = season();
    private static final Season TWO_RIGS = season(FOLDER.resolve("two-rigs.yaml"));
    private static final SpringSource SPRINGS = number -> RandomGround.of(ONE_RIG, 25, number);
    private static final List<Integer> TRAINING =
            IntStream.rangeClosed(1, 3).boxed().toList();

    @Test
    void aVariantIsLivedByNoWorsePlanThanAnyThatWasFound() {
        try (Workers pool = new Workers(2, "test")) {
            List<List<SpringPlan>> tries = plans(pool);
            List<PlanChoice.Chosen> chosen = new PlanChoice(
                            SPRINGS,
                            TRAINING,
                            0,
                            Measure.of(false, false),
                            new SpringWorkers(pool, 0, SpringProgress.SILENT))
                    .among(tries);

            for (PlanChoice.Chosen variant : chosen) {
                CompiledSeason season = variant.plan().season();
                for (List<SpringPlan> plans : tries) {
                    for (SpringPlan plan : plans) {
                        assertThat(late(variant.plan())).isLessThanOrEqualTo(late(plan.in(season)));
                    }
                }
            }
        }
    }

    @Test
    void aPlanterKeepsItsFieldsWhereAVariantHasNoOther() {
        SpringPlan two = SpringPlan.first(SpringPlan.dry(ONE_RIG));

        SpringPlan followed = two.in(SpringPlan.dry(secondPlanterAlone()));

        assertThat(followed.orders().byPlanter()).hasSize(1);
        assertThat(followed.orders().byPlanter().get(0))
                .startsWith(two.orders().byPlanter().get(1).toArray(String[]::new))
                .hasSizeGreaterThan(two.orders().byPlanter().get(1).size())
                .doesNotHaveDuplicates();
    }

    @Test
    void aPlanterKeepsItsFieldsWhereAVariantHasOneMore() {
        SpringPlan one = SpringPlan.first(SpringPlan.dry(secondPlanterAlone()));

        SpringPlan followed = one.in(SpringPlan.dry(ONE_RIG));

        assertThat(followed.orders().byPlanter()).hasSize(2);
        assertThat(followed.orders().byPlanter().get(1))
                .startsWith(one.orders().byPlanter().get(0).toArray(String[]::new));
    }

    private static Season secondPlanterAlone() {
        return ONE_RIG.change().applicators(ONE_RIG.applicators().subList(1, 2)).season();
    }

    private static List<List<SpringPlan>> plans(Workers pool) {
        return new SharedPlans(300, 1).of(List.of(ONE_RIG, TWO_RIGS), 2, pool);
    }

    private static double late(SpringPlan plan) {
        SpringLife life = new SpringLife(plan.season(), plan.orders(), 0, Optional.empty());
        return TRAINING.stream()
                        .mapToDouble(number -> {
                            SpringFigures lived = life.live(SPRINGS, number).figures();
                            return Measure.LATE.of(lived) + Measure.UNSERVED.of(lived) * ONE_RIG.days();
                        })
                        .sum()
                / TRAINING.size();
    }

    private static Season season(Path... patches) {
        return ((Reading.Valid) SeasonFiles.read(FOLDER, List.of(patches))).season();
    }
}
