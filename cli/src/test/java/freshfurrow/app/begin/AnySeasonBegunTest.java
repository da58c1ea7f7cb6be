package freshfurrow.app.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.app.season.CheckedSeason;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever is answered within reason makes a season without a problem, which has those figures. */
class AnySeasonBegunTest {
    private static final double NEAR = 1e-9;

    @Property(tries = 500)
    void anyAnswersMakeASeasonOfThoseFigures(@ForAll long seed) {
        Random random = new Random(seed);
        UnitSystem units = random.nextBoolean() ? UnitSystem.US : UnitSystem.METRIC;
        Map<Section, List<Entry>> entries = new EnumMap<>(Section.class);
        entries.put(Section.PLACES, List.of(new Entry("", Map.of("at", "41.0, -97.0"))));
        for (Section section : List.of(Section.RECIPES, Section.PLANTERS, Section.RIGS, Section.WATER)) {
            List<Entry> all = new ArrayList<>();
            int count = section == Section.RECIPES ? 1 : 1 + random.nextInt(3);
            for (int i = 0; i < count; i++) {
                all.add(new Entry(
                        random.nextBoolean() ? "" : section.noun().charAt(0) + "x" + i,
                        figures(section, units, random)));
            }
            entries.put(section, all);
        }
        entries.put(Section.RIGS, withDrumsOfNoMoreThanTheMix(entries, units));
        entries.put(Section.PLANTERS, withRoomForABatch(entries, units));
        List<FieldRow> rows = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(6); i++) {
            rows.add(row(random, i));
        }
        NewSeason begun = NewSeason.of(new Answers(units, entries, GivenFields.table(rows), false), NewSeasonTest.HERE);

        assertThat(begun.problems()).isEmpty();
        assertThat(begun.missing()).isEmpty();
        Season season = ((Reading.Valid) begun.reading()).season();
        assertThat(CheckedSeason.of(season).season()).isSameAs(season);
        assertThat(season.fields()).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            assertThat(season.fields().get(i).areaHa())
                    .isCloseTo(
                            Kind.AREA.toSi(Double.parseDouble(rows.get(i).area().replace(",", "")), units.area()),
                            within(NEAR));
        }
        planters(season, entries.get(Section.PLANTERS), units);
        rigs(season, entries.get(Section.RIGS), units);
    }

    /** What a full batch makes is never thinner than the mix that is asked for. */
    private static List<Entry> withDrumsOfNoMoreThanTheMix(Map<Section, List<Entry>> entries, UnitSystem units) {
        double perCompost = mixPerCompost(entries, units);
        return entries.get(Section.RIGS).stream()
                .map(rig -> {
                    Map<String, String> typed = new LinkedHashMap<>(rig.typed());
                    double most = perCompost * figure(typed, Section.RIGS, "batchCompost", units);
                    if (figure(typed, Section.RIGS, "drum", units) >= most) {
                        typed.put("drum", String.format(Locale.ROOT, "%.2f", most * 0.99));
                    }
                    return new Entry(rig.id(), typed);
                })
                .toList();
    }

    private static double mixPerCompost(Map<Section, List<Entry>> entries, UnitSystem units) {
        Map<String, String> recipe = entries.get(Section.RECIPES).get(0).typed();
        return figure(recipe, Section.RECIPES, "mix", units) / figure(recipe, Section.RECIPES, "compost", units);
    }

    /** The mix of a full batch fits in every tank. */
    private static List<Entry> withRoomForABatch(Map<Section, List<Entry>> entries, UnitSystem units) {
        double perCompost = mixPerCompost(entries, units);
        double mix = entries.get(Section.RIGS).stream()
                .mapToDouble(rig -> figure(rig.typed(), Section.RIGS, "batchCompost", units) * perCompost)
                .max()
                .orElseThrow();
        return entries.get(Section.PLANTERS).stream()
                .map(planter -> {
                    Map<String, String> typed = new LinkedHashMap<>(planter.typed());
                    if (figure(typed, Section.PLANTERS, "tank", units) < mix) {
                        String tank = String.format(Locale.ROOT, "%,.0f", Math.ceil(mix));
                        typed.put("tank", units == UnitSystem.US ? tank : tank.replace(",", ""));
                    }
                    return new Entry(planter.id(), typed);
                })
                .toList();
    }

    /** Within the usual range, some with a unit, some without, some not answered at all. */
    private static Map<String, String> figures(Section section, UnitSystem units, Random random) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (Question question : section.questions()) {
            if (question.form() == Form.QUANTITY
                    && !question.usual(units).value().isEmpty()
                    && random.nextInt(3) > 0) {
                String[] ends = question.usual(units).range().split(" to ", 2);
                double least = Double.parseDouble(ends[0]);
                double most = Double.parseDouble(ends[1].replaceAll(" .*", ""));
                double figure = least + (most - least) * random.nextInt(101) / 100;
                String text = String.format(Locale.ROOT, random.nextBoolean() ? "%,.1f" : "%.2f", figure);
                typed.put(question.key(), text + (random.nextBoolean() ? "" : " " + question.unit(units)));
            }
        }
        return typed;
    }

    private static FieldRow row(Random random, int i) {
        String area = String.format(Locale.ROOT, "%,.1f", 1 + random.nextInt(3_000) / 2.0);
        return new FieldRow(
                random.nextBoolean() ? "" : "F" + i,
                random.nextBoolean() ? "Field, no. \"" + i + "\"" : "",
                area,
                String.format(Locale.ROOT, "%.4f", 40.9 + random.nextInt(2_000) / 1e4),
                String.format(Locale.ROOT, "%.4f", -97.1 + random.nextInt(2_000) / 1e4),
                List.of("corn", "Sweet corn", "beans").get(random.nextInt(3)),
                random.nextBoolean() ? "" : "poor");
    }

    private static void planters(Season season, List<Entry> entries, UnitSystem units) {
        for (int i = 0; i < entries.size(); i++) {
            Planter planter = (Planter) season.applicators().get(i);
            Map<String, String> typed = entries.get(i).typed();
            holds(Kind.VOLUME, typed, "tank", Section.PLANTERS, units, planter.tankL());
            holds(Kind.LENGTH, typed, "width", Section.PLANTERS, units, planter.widthM());
            holds(Kind.SPEED, typed, "speed", Section.PLANTERS, units, planter.speedMPerS());
        }
    }

    private static void rigs(Season season, List<Entry> entries, UnitSystem units) {
        for (int i = 0; i < entries.size(); i++) {
            Rig rig = season.rigs().get(i);
            Map<String, String> typed = entries.get(i).typed();
            holds(Kind.VOLUME, typed, "drum", Section.RIGS, units, rig.drumL());
            holds(Kind.MASS, typed, "batchCompost", Section.RIGS, units, rig.batchCompostKg());
            holds(Kind.VOLUME, typed, "nurseTank", Section.RIGS, units, rig.nurseTankL());
        }
    }

    /** The figure that was typed, or the default, in the season's units. */
    private static void holds(
            Kind kind, Map<String, String> typed, String key, Section section, UnitSystem units, double inSeason) {
        double figure = figure(typed, section, key, units);
        assertThat(inSeason).isCloseTo(kind.toSi(figure, question(section, key).unit(units)), within(NEAR));
    }

    private static double figure(Map<String, String> typed, Section section, String key, UnitSystem units) {
        String text =
                typed.getOrDefault(key, question(section, key).usual(units).value());
        return Double.parseDouble(text.replaceAll("[^0-9.]", ""));
    }

    private static Question question(Section section, String key) {
        return section.questions().stream()
                .filter(each -> each.key().equals(key))
                .findAny()
                .orElseThrow();
    }
}
