package freshfurrow.model.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.CrewDays;
import freshfurrow.model.timeline.PlanRecorder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The invented seasons that come with the program: each reads and plays out. */
class ScenariosTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final double HA_PER_ACRE = 0.404_685_642_24;

    @ParameterizedTest
    @ValueSource(strings = {"first-season", "spring", "metric", "cooperative", "weather-spring", "mixed-farm"})
    void a_scenario_reads_and_plays_out_so_that_the_audit_finds_nothing(String name) {
        Season season = read(name);
        Plan plan = played(season, dealt(season));

        assertThat(Audit.check(season, plan)).isEmpty();
        assertThat(plan.totals().areaHa()).isPositive();
        new CrewDays(season, plan).areSound();
    }

    @Test
    void the_variant_of_the_spring_adds_a_rig_and_leaves_the_rest_alone() {
        Season spring = read("spring");
        Season twoRigs = read("spring", SCENARIOS.resolve("spring").resolve("two-rigs.yaml"));

        assertThat(twoRigs.rigs()).extracting("id").containsExactly("R1", "R2");
        assertThat(twoRigs.rigs().subList(0, 1)).isEqualTo(spring.rigs());
        assertThat(twoRigs.fields()).isEqualTo(spring.fields());
        assertThat(twoRigs.applicators()).isEqualTo(spring.applicators());
    }

    @Test
    void the_seasons_are_as_large_as_their_readmes_say() {
        assertThat(Stream.of("first-season", "spring", "metric", "cooperative")
                        .map(name -> read(name).fields().size()))
                .containsExactly(8, 40, 15, 400);
        assertThat(Stream.of("first-season", "spring", "cooperative")
                        .map(name -> Math.round(areaHa(read(name)) / HA_PER_ACRE)))
                .containsExactly(655L, 3_000L, 23_240L);
    }

    /** 167 ac at 2 lb/ac and 66 ac at 1.5 lb/ac take 433 lb; 390 lb are there. */
    @Test
    void the_mixed_farm_is_short_of_compost_as_its_readme_says() {
        Season farm = read("mixed-farm");

        assertThat(farm.fields()).hasSize(9);
        assertThat(farm.sprayers()).singleElement().satisfies(boom -> assertThat(boom.on())
                .contains("R1"));
        double neededKg = farm.fields().stream()
                .mapToDouble(
                        field -> field.areaHa() * farm.recipe(field.recipe()).compostKgPerHa())
                .sum();
        double thereKg =
                farm.compost().stream().mapToDouble(lot -> lot.massKg()).sum();
        assertThat(neededKg / 0.453_592_37).isCloseTo(433, within(1.0));
        assertThat(thereKg / 0.453_592_37).isCloseTo(390, within(1.0));
        assertThat(farm.field("O1").fixed().on()).contains(LocalDate.of(2027, 5, 5));
    }

    /**
     * Corn on 1,860 ac takes 4,650 lb at 2.5 lb/ac. Until the delivery on 5 May, the day after its window closes, 4,500 lb are
     * there. So a plan of all fields has (4,650 - 4,500) / 2.5 = 60 ac a day late at least, and these lists have no more.
     */
    @Test
    void the_spring_can_be_planted_with_just_the_lateness_that_its_delivery_of_compost_brings() {
        Plan plan = played(
                read("spring"),
                List.of(
                        List.of(
                                "F12", "F23", "F19", "F03", "F13", "F07", "F02", "F14", "F04", "F10", "F09", "F40",
                                "F27", "F32", "F38", "F37", "F34"),
                        List.of(
                                "F08", "F21", "F05", "F15", "F06", "F18", "F16", "F11", "F22", "F01", "F20", "F24",
                                "F17", "F31", "F25", "F35", "F28", "F30", "F26", "F39", "F36", "F33", "F29")));

        assertThat(plan.totals().unservedHa()).isZero();
        assertThat(plan.totals().lateHaDays() / HA_PER_ACRE).isCloseTo(60, within(0.001));
    }

    /** RFC 7946, The GeoJSON Format (IETF 2016), section 3.1.1: longitude first, then latitude. */
    @Test
    void the_polygons_of_the_metric_farm_lie_around_its_barn() {
        assertThat(read("metric").fields()).allSatisfy(field -> {
            assertThat(field.outline()).hasSize(1);
            assertThat(field.at().orElseThrow().lat()).isBetween(48.5, 48.7);
            assertThat(field.at().orElseThrow().lon()).isBetween(2.2, 2.4);
        });
    }

    /** ASABE D497, row-crop planters: field efficiency 50 to 75 %, speed 4 to 7 mph. From memory. */
    @ParameterizedTest
    @ValueSource(strings = {"first-season", "spring", "metric", "cooperative", "weather-spring", "mixed-farm"})
    void its_planters_work_as_row_crop_planters_do(String name) {
        assertThat(read(name).planters()).allSatisfy(planter -> {
            assertThat(planter.fieldEfficiency()).isBetween(0.50, 0.75);
            assertThat(planter.speedMPerS() * 3600 / 1609.344).isBetween(4.0, 7.0);
        });
    }

    private static Season read(String name, Path... variants) {
        Reading reading = SeasonFiles.read(SCENARIOS.resolve(name), List.of(variants));
        assertThat(reading).isInstanceOf(Reading.Valid.class);
        return ((Reading.Valid) reading).season();
    }

    private static Plan played(Season season, List<List<String>> lists) {
        return PlanRecorder.record(CompiledSeason.of(season), lists, SeasonSource.of(season, "season.yaml", ""));
    }

    private static double areaHa(Season season) {
        return season.fields().stream().mapToDouble(Field::areaHa).sum();
    }

    /** The fields in the order in which their windows close, each to the planter that has been given the fewest. */
    private static List<List<String>> dealt(Season season) {
        List<List<String>> lists = new ArrayList<>();
        season.applicators().forEach(planter -> lists.add(new ArrayList<>()));
        season.fields().stream()
                .sorted(Comparator.comparing(field -> field.window().last()))
                .forEach(field -> Stream.iterate(0, p -> p < lists.size(), p -> p + 1)
                        .filter(p -> field.allows(season.applicators().get(p)))
                        .map(lists::get)
                        .min(Comparator.comparingInt(List::size))
                        .orElseThrow()
                        .add(field.id()));
        return lists;
    }
}
