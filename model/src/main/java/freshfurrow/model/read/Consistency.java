package freshfurrow.model.read;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.read.FieldReader.FieldSource;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** What the parts of a season, each right by itself, must be to one another. Parts that are wrong are left out of it. */
final class Consistency {
    /** Rounding of units is no problem. */
    private static final double TOLERANCE = 1e-6;

    private final Parts parts;
    private final Keys file;
    private final Places places;
    private final DisplayUnits units;
    private final Problems problems;

    Consistency(Parts parts, Keys file, Places places, DisplayUnits units, Problems problems) {
        this.parts = parts;
        this.file = file;
        this.places = places;
        this.units = units;
        this.problems = problems;
    }

    void check() {
        if (parts.placesKnown()) {
            parts.planterKeys().values().forEach(this::checkPlace);
            parts.rigKeys().values().forEach(this::checkPlace);
            parts.lotKeys().values().forEach(this::checkPlace);
        }
        if (parts.first().isPresent()
                && parts.last().isPresent()
                && !parts.last().get().isBefore(parts.first().get())) {
            checkWindows(parts.first().get(), parts.last().get());
            checkOpenDays(parts.first().get(), parts.last().get());
        }
        parts.rigs().forEach(this::checkRig);
        checkPlacesOfLots();
        parts.planters().stream().filter(planter -> planter.on().isEmpty()).forEach(this::checkPlanter);
        parts.planters().forEach(this::checkMounted);
    }

    private void checkOpenDays(LocalDate first, LocalDate last) {
        if (parts.closed().weekdays().size() == DayOfWeek.values().length) {
            return;
        }
        boolean open = first.datesUntil(last.plusDays(1))
                .anyMatch(date -> !parts.closed().contains(date));
        if (!open) {
            file.problem("closed", "leaves no day of the season open", "open a day or lengthen the season");
        }
    }

    private void checkPlace(Keys own) {
        if (own.node("at").orElse(null) instanceof Node.Text at
                && !at.text().isBlank()
                && !places.ids().contains(at.text())) {
            own.problem("at", "there is no place " + at.text(), FieldReader.unknown(at.text(), places.ids()));
        }
    }

    /** A crew fetches all compost or none of it: of one that is partly fetched nobody could say which lot a batch is made of. */
    private void checkPlacesOfLots() {
        if (parts.lots().stream().allMatch(lot -> lot.at().isEmpty())) {
            return;
        }
        for (CompostLot lot : parts.lots()) {
            if (lot.at().isEmpty()) {
                parts.lotKeys()
                        .get(lot.id())
                        .problem(
                                "at",
                                "is missing, while other lots say where they lie",
                                "give every lot a place, or none");
            }
        }
        parts.rigs().forEach(this::checkCompostLoad);
    }

    private void checkCompostLoad(Rig rig) {
        Keys keys = parts.rigKeys().get(rig.id());
        if (rig.mostCompostKg() >= rig.batchCompostKg() * (1 - TOLERANCE)) {
            return;
        }
        if (rig.compostLoad().isPresent() && rig.compostLoad().getAsDouble() <= rig.mostCompostKg()) {
            keys.problem(
                    "compostLoad",
                    "holds less than the "
                            + masses(rig.mostCompostKg(), rig.batchCompostKg()).other() + " of one full batch",
                    "give at least batchCompost");
        } else {
            Apart masses = masses(Math.max(0, rig.mostCompostKg()), rig.batchCompostKg());
            keys.problem(
                    "payload",
                    "leaves " + masses.one()
                            + " for compost beside the empty weight and a full nurse tank, less than the "
                            + masses.other() + " of one full batch",
                    "check payload, emptyWeight and nurseTank, or use a smaller nurse tank");
        }
    }

    private Apart masses(double kilograms, double others) {
        return Apart.of(
                units.mass().fromKilograms(kilograms),
                units.mass().fromKilograms(others),
                0,
                units.mass().symbol());
    }

    /** Windows of crops, and those that fields have of their own. */
    private void checkWindows(LocalDate first, LocalDate last) {
        parts.crops().forEach((id, crop) -> crop.window()
                .ifPresent(
                        window -> checkWindow(window, parts.cropKeys().get(id).at("window"), first, last)));
        Map<String, DateWindow> windows = new HashMap<>();
        parts.fields().forEach(field -> windows.put(field.id(), field.window()));
        for (FieldSource source : parts.sources()) {
            DateWindow window = windows.get(source.id());
            if (window != null
                    && source.keys() instanceof Node.Mapping keys
                    && keys.entries().get("window") instanceof Node.Text own) {
                checkWindow(window, own.place(), first, last);
            }
        }
    }

    private void checkWindow(DateWindow window, Place place, LocalDate first, LocalDate last) {
        if (window.last().isBefore(first) || window.first().isAfter(last)) {
            problems.add(
                    place,
                    "the window " + window.first() + "/" + window.last() + " lies outside the season " + first + "/"
                            + last,
                    "move the window or the season's first and last day");
        }
    }

    private void checkRig(Rig rig) {
        Keys keys = parts.rigKeys().get(rig.id());
        for (Recipe recipe : recipesOf(field -> true)) {
            double concentrate = rig.drumL() / rig.batchCompostKg() * recipe.compostKgPerHa();
            if (concentrate > recipe.mixLPerHa() * (1 + TOLERANCE)) {
                Apart rates = rates(concentrate, recipe.mixLPerHa());
                keys.problem(
                        "drum",
                        "recipe " + recipe.id() + " takes " + rates.one() + " of its concentrate but only "
                                + rates.other() + " of mix",
                        "use more compost per batch, a smaller drum, less compost per area or more mix per area");
            }
        }
    }

    private void checkMounted(Applicator planter) {
        planter.on().filter(id -> !parts.rigKeys().containsKey(id)).ifPresent(id -> parts.planterKeys()
                .get(planter.id())
                .problem(
                        "on",
                        "there is no rig " + id,
                        FieldReader.unknown(id, parts.rigKeys().keySet())));
    }

    private void checkPlanter(Applicator planter) {
        Keys keys = parts.planterKeys().get(planter.id());
        List<Recipe> recipes = recipesOf(field -> field.allows(planter));
        for (Rig rig : parts.rigs()) {
            for (Recipe recipe : recipes) {
                double batchMixL = rig.batchCompostKg() / recipe.compostKgPerHa() * recipe.mixLPerHa();
                if (planter.tankL() < batchMixL * (1 - TOLERANCE)) {
                    Apart volumes = volumes(planter.tankL(), batchMixL);
                    keys.problem(
                            "tank",
                            "holds " + volumes.one() + ", less than the " + volumes.other()
                                    + " of mix that one batch of " + rig.id() + " makes by recipe " + recipe.id(),
                            "use a larger tank or less compost per batch");
                }
            }
        }
    }

    private Apart volumes(double litres, double others) {
        return Apart.of(
                units.volume().fromLitres(litres),
                units.volume().fromLitres(others),
                0,
                units.volume().symbol());
    }

    private Apart rates(double litresPerHa, double others) {
        double areas = units.area().fromHectares(1);
        return Apart.of(
                units.volume().fromLitres(litresPerHa / areas),
                units.volume().fromLitres(others / areas),
                1,
                units.volume().symbol() + "/" + units.area().symbol());
    }

    /** The recipes that the fields take. */
    private List<Recipe> recipesOf(Predicate<Field> fields) {
        Set<String> used = new LinkedHashSet<>();
        parts.fields().stream().filter(fields).map(Field::recipe).forEach(used::add);
        return used.stream().flatMap(id -> parts.recipe(id).stream()).toList();
    }
}
