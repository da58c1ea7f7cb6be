package freshfurrow.cli.words;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What planning takes where a season file leaves the crew's rules out, an entry each. */
final class TakenDefaults {
    private static final double PER_CENT = 100;

    private final Season season;
    private final Figures figures;
    private final List<String> entries = new ArrayList<>();

    private TakenDefaults(Season season, Figures figures) {
        this.season = season;
        this.figures = figures;
    }

    /** The entries; none where the file says all. */
    static List<String> of(Season season, Figures figures) {
        TakenDefaults taken = new TakenDefaults(season, figures);
        taken.recipes();
        taken.rigs();
        if (season.saysWhereCompostLies()) {
            taken.compost();
        }
        taken.planters();
        if (season.goals().untreatedDays().isPresent()) {
            taken.waits();
        }
        taken.whatTakesNoTime();
        taken.goals();
        return taken.entries;
    }

    private void recipes() {
        season.recipes().stream()
                .filter(recipe -> recipe.reserve().isEmpty())
                .forEach(recipe -> entries.add(recipe.id() + ": loads are planned "
                        + Figures.toTheSecond(recipe.reserveS()) + " short of their use-by time (`reserve`)"));
    }

    private void rigs() {
        season.rigs().stream()
                .filter(rig -> rig.leastBatchTime().isEmpty())
                .forEach(rig -> entries.add(rig.id() + ": no batch takes less than "
                        + Figures.toTheSecond(rig.leastBatchTimeS()) + " (`leastBatchTime`)"));
    }

    private void compost() {
        for (Rig rig : season.rigs()) {
            if (rig.compostLoad().isEmpty()) {
                entries.add(rig.id() + ": has no more than " + figures.mass(rig.mostCompostKg())
                        + " of compost on board (`compostLoad`)");
            }
            if (rig.compostLoadingMinPerKg() == Rig.USUAL_LOADING_MIN_PER_KG) {
                entries.add(rig.id() + ": to load that of one full batch, " + figures.mass(rig.batchCompostKg())
                        + ", takes "
                        + Figures.toTheSecond(
                                Math.round(rig.batchCompostKg() * rig.compostLoadingMinPerKg() * MINUTE_S))
                        + " (`compostLoading`)");
            }
        }
    }

    private void planters() {
        season.applicators().stream()
                .filter(planter -> planter.leastFill() == Applicator.USUAL_LEAST_FILL)
                .forEach(planter -> entries.add(planter.id() + ": no fill of less than "
                        + String.format(Locale.ROOT, "%.0f %%", PER_CENT * planter.leastFill())
                        + " of the tank, but to finish something (`leastFill`)"));
    }

    private void waits() {
        season.planters().stream()
                .filter(planter -> planter.longestWaitS().isEmpty())
                .forEach(planter -> entries.add(planter.id()
                        + ": waits for a rig as long as it takes before it plants without extract (`longestWait`)"));
    }

    /** Of what a crew does at the beginning and the end of a day or of a draw. */
    private void whatTakesNoTime() {
        if (season.rigs().stream().allMatch(rig -> rig.setUpS() == 0 && rig.closeUpS() == 0)) {
            entries.add("Setting rigs up and closing them up takes no time (`setUp`, `closeUp`)");
        }
        if (season.applicators().stream().allMatch(planter -> planter.flushS() == 0)) {
            entries.add(WorkWords.capital(WorkWords.of(season).machines()) + " are not flushed (`flush`)");
        }
        if (season.waterPoints().stream().allMatch(point -> point.hookUpS() == 0)) {
            entries.add("Hooking up for a draw takes no time (`hookUp`)");
        }
    }

    private void goals() {
        Goals goals = season.goals();
        Goals usual = Goals.DEFAULT;
        if (goals.scrapMin() == usual.scrapMin() && goals.leastPieceHa() == usual.leastPieceHa()) {
            entries.add("A day on which less than " + figures.area(goals.leastPieceHa())
                    + " of a larger field is " + WorkWords.of(season).done() + " weighs as much as "
                    + minutes(goals.scrapMin())
                    + " of work (`scrap`, `leastPiece`)");
        }
        if (goals.callOutMin() == usual.callOutMin()) {
            entries.add("A day on which a machine comes out for no load weighs as much as "
                    + minutes(goals.callOutMin()) + " of work (`callOut`)");
        }
        if (season.saysWhereCompostLies() && goals.compostTripMin() == usual.compostTripMin()) {
            entries.add(
                    "A compost trip weighs as much as " + minutes(goals.compostTripMin()) + " of work (`compostTrip`)");
        }
    }

    private static String minutes(double minutes) {
        return String.format(Locale.ROOT, "%.0f min", minutes);
    }
}
