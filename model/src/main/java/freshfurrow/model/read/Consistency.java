package freshfurrow.model.read;

import freshfurrow.model.read.FieldReader.FieldSource;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WorkHours;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** What the parts of a season, each right by itself, must be to one another. */
final class Consistency {
    /** Rounding of units is no problem. */
    private static final double TOLERANCE = 1e-6;

    private final Season season;
    private final Keys file;
    private final Map<String, Keys> planters;
    private final Map<String, Keys> rigs;
    private final List<FieldSource> sources;
    private final Places places;
    private final Problems problems;

    Consistency(
            Season season,
            Keys file,
            Map<String, Keys> planters,
            Map<String, Keys> rigs,
            List<FieldSource> sources,
            Places places,
            Problems problems) {
        this.season = season;
        this.file = file;
        this.planters = planters;
        this.rigs = rigs;
        this.sources = sources;
        this.places = places;
        this.problems = problems;
    }

    void check() {
        season.planters().forEach(planter -> checkPlace(planters.get(planter.id()), planter.at()));
        season.rigs().forEach(rig -> checkPlace(rigs.get(rig.id()), rig.at()));
        for (int i = 0; i < sources.size(); i++) {
            checkWindow(season.fields().get(i), sources.get(i));
        }
        season.rigs().forEach(this::checkRig);
        season.planters().forEach(this::checkPlanter);
        season.waterPoints().forEach(this::checkWaterPoint);
    }

    private void checkPlace(Keys machine, String at) {
        if (!places.ids().contains(at)) {
            machine.problem("at", "there is no place " + at, FieldReader.unknown(at, places.ids()));
        }
    }

    private void checkWindow(Field field, FieldSource source) {
        if (field.window().last().isBefore(season.first())
                || field.window().first().isAfter(season.last())) {
            problems.add(
                    source.keys().place(),
                    "the window " + field.window().first() + "/"
                            + field.window().last() + " lies outside the season " + season.first() + "/"
                            + season.last(),
                    "move the window or the season's first and last day");
        }
    }

    private void checkRig(Rig rig) {
        Keys keys = rigs.get(rig.id());
        for (Recipe recipe : usedRecipes()) {
            double concentrate = rig.drumL() / rig.batchCompostKg() * recipe.compostKgPerHa();
            if (concentrate > recipe.mixLPerHa() * (1 + TOLERANCE)) {
                keys.problem(
                        "drum",
                        String.format(
                                Locale.ROOT,
                                "recipe %s takes %.1f L/ha of its concentrate but only %.1f L/ha of mix",
                                recipe.id(),
                                concentrate,
                                recipe.mixLPerHa()),
                        "use more compost a batch, a smaller drum, less compost an area or more mix an area");
            }
        }
        int work = longest(rig.hours());
        if (rig.batchTimeS() > work) {
            keys.problem(
                    "batchTime", "a batch fits into none of the rig's hours", "give longer hours or a shorter batch");
        }
        if (rig.cleanTimeS() > work) {
            keys.problem("cleanTime", "cleaning fits into none of the rig's hours", "give longer hours");
        }
    }

    private void checkPlanter(Planter planter) {
        Keys keys = planters.get(planter.id());
        for (Rig rig : season.rigs()) {
            for (Recipe recipe : recipesOf(planter)) {
                double batchMixL = rig.batchCompostKg() / recipe.compostKgPerHa() * recipe.mixLPerHa();
                if (planter.tankL() < batchMixL * (1 - TOLERANCE)) {
                    keys.problem(
                            "tank",
                            String.format(
                                    Locale.ROOT,
                                    "holds %.0f L, less than the %.0f L of mix that one batch of %s makes by recipe %s",
                                    planter.tankL(),
                                    batchMixL,
                                    rig.id(),
                                    recipe.id()),
                            "use a larger tank or less compost a batch");
                }
            }
        }
        int work = longest(planter.hours());
        if (planter.fillSetupS() >= work) {
            keys.problem("fillSetup", "a fill fits into none of the planter's hours", "give longer hours");
        }
        if (planter.moveTimeS() >= work) {
            keys.problem("moveTime", "a move fits into none of the planter's hours", "give longer hours");
        }
    }

    private void checkWaterPoint(WaterPoint point) {
        if (point.treatmentS() >= longest(point.hours())) {
            file.keys("waterPoints")
                    .flatMap(points -> points.keys(point.id()))
                    .ifPresent(keys -> keys.problem(
                            "treatment", "a draw fits into none of the point's hours", "give longer hours"));
        }
    }

    private Set<Recipe> usedRecipes() {
        Set<Recipe> used = new LinkedHashSet<>();
        season.fields().forEach(field -> used.add(season.recipe(field.recipe())));
        return used;
    }

    private Set<Recipe> recipesOf(Planter planter) {
        Set<Recipe> used = new LinkedHashSet<>();
        season.fields().stream()
                .filter(field -> field.allows(planter.id()))
                .forEach(field -> used.add(season.recipe(field.recipe())));
        return used;
    }

    private static int longest(WorkHours hours) {
        return hours.spans().stream()
                .mapToInt((DaySpan span) -> span.endS() - span.startS())
                .max()
                .orElse(0);
    }
}
