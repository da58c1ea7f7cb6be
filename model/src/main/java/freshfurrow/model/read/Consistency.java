package freshfurrow.model.read;

import freshfurrow.model.read.FieldReader.FieldSource;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
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
        checkOpenDays();
        if (problems.none()) {
            new RoomInHours(season, file, planters, rigs, sources, problems).check();
        }
    }

    private void checkOpenDays() {
        boolean open = season.first().datesUntil(season.last().plusDays(1)).anyMatch(date -> !season.closed()
                .contains(date));
        if (!open) {
            file.problem("closed", "leaves no day of the season open", "open a day or lengthen the season");
        }
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
                                "recipe %s takes %s of its concentrate but only %s of mix",
                                recipe.id(),
                                rate(concentrate),
                                rate(recipe.mixLPerHa())),
                        "use more compost a batch, a smaller drum, less compost an area or more mix an area");
            }
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
                                    "holds %s, less than the %s of mix that one batch of %s makes by recipe %s",
                                    volume(planter.tankL()),
                                    volume(batchMixL),
                                    rig.id(),
                                    recipe.id()),
                            "use a larger tank or less compost a batch");
                }
            }
        }
    }

    private String volume(double litres) {
        return String.format(
                Locale.ROOT,
                "%.0f %s",
                season.units().volume().fromLitres(litres),
                season.units().volume().symbol());
    }

    private String rate(double litresPerHa) {
        double perArea = litresPerHa / season.units().area().fromHectares(1);
        return String.format(
                Locale.ROOT,
                "%.1f %s/%s",
                season.units().volume().fromLitres(perArea),
                season.units().volume().symbol(),
                season.units().area().symbol());
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
}
