package freshfurrow.cli.words;

import static freshfurrow.model.quantity.Factors.HOUR_S;

import freshfurrow.app.season.CheckedSeason;
import freshfurrow.app.season.LargestLoad;
import freshfurrow.cli.needs.CompostNeed;
import freshfurrow.cli.needs.CropNeed;
import freshfurrow.cli.needs.PlantingDays;
import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.Table;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A season in sums, before anything is planned. */
public final class SeasonSummary {
    private static final int WIDTH = 110;

    private final Season season;
    private final List<LargestLoad> largestLoads;
    private final Figures figures;
    private final WorkWords words;
    private final PricesSummary prices;
    private final List<String> lines = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    private SeasonSummary(CheckedSeason checked) {
        this.season = checked.season();
        this.largestLoads = checked.largestLoads();
        this.figures = new Figures(season.units());
        this.words = WorkWords.of(season);
        prices = new PricesSummary(season, checked.plantingCosts());
    }

    /** The summary, a line an entry. */
    public static List<String> lines(CheckedSeason season) {
        SeasonSummary summary = new SeasonSummary(season);
        summary.write();
        return summary.lines;
    }

    private void write() {
        lines.add("Season " + season.name() + ", " + Figures.day(season.first()) + " to " + Figures.day(season.last()));
        lines.add("");
        crops();
        planters();
        fixed();
        loads();
        compost();
        rigs();
        prices();
        section("Roads (`travel.roads`)", RoadsSummary.of(season, figures));
        section("Times vary around those of the season file (`spread`)", SpreadSummary.of(season));
        section(
                "Taken where the season file says nothing (see docs/season-file.md)",
                TakenDefaults.of(season, figures));
        cautions.addAll(WithoutEffect.of(season));
        cautions.addAll(RoadsSummary.cautions(season));
        season.clockChanges().all().forEach(change -> cautions.add(new Cautions(figures).text(change)));
        if (!cautions.isEmpty()) {
            heading("Cautions");
            cautions.forEach(this::entry);
        }
        lines.add("");
        lines.add("Days needed: area / (effective field capacity x hours a day), all " + words.machines()
                + " at work. Fills, driving, waiting");
        lines.add("and rain are not included here; `plan` works them in.");
        lines.add("Safety: " + Cautions.FIRST_WITH_SOURCES);
    }

    private void crops() {
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left("Crop"),
                        Table.Column.right("Fields"),
                        Table.Column.right("Area"),
                        Table.Column.right("Compost"),
                        Table.Column.right("Water"),
                        Table.Column.right("Days needed"),
                        Table.Column.right("Days available")),
                "Windows");
        List<CropNeed> crops = CropNeed.byCrop(season);
        crops.forEach(crop -> row(table, crop));
        if (crops.size() > 1) {
            row(table, CropNeed.ofAll(season, "all"));
        }
        lines.addAll(table.lines());
    }

    private void row(Table table, CropNeed crop) {
        table.row(
                List.of(
                        crop.crop(),
                        Integer.toString(crop.fields()),
                        figures.area(crop.areaHa()),
                        figures.mass(crop.compostKg()),
                        figures.volume(crop.mixL()),
                        String.format(Locale.ROOT, "%.1f", crop.daysNeeded()),
                        Integer.toString(crop.daysThere())),
                List.of(Figures.day(crop.opens()) + " to " + Figures.day(crop.closes())));
        if (crop.daysNeeded() > crop.daysThere()) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "%s: nonstop %s takes %.1f days, but its windows have only %d working days.",
                    crop.crop(),
                    words.noun(),
                    crop.daysNeeded(),
                    crop.daysThere()));
        }
    }

    private void planters() {
        heading(WorkWords.capital(words.machines()));
        for (Applicator planter : season.applicators()) {
            Duration hours = PlantingDays.hoursADay(planter);
            double aDay = PlantingDays.areaHaADay(planter);
            entry(planter.id() + ": field capacity " + figures.area(aDay * HOUR_S / hours.toSeconds()) + "/h, "
                    + Figures.span(hours) + " a day: " + figures.area(aDay) + " a day");
        }
    }

    private void loads() {
        heading("Largest load that the tank and the hold time allow");
        largestLoads.forEach(largest -> load(largest.planter(), largest.recipe(), largest.areaHa()));
    }

    private void load(Applicator planter, Recipe recipe, double areaHa) {
        double litres = Math.min(planter.tankL(), areaHa * recipe.mixLPerHa());
        entry(planter.id() + " with " + recipe.id() + ": " + figures.volume(litres) + " for " + figures.area(areaHa)
                + ", " + Figures.tank(litres / planter.tankL()) + ", hold time "
                + Figures.span(Duration.ofSeconds(recipe.holdS())));
        if (areaHa == 0) {
            cautions.add(planter.id() + " with " + recipe.id() + ": the hold time ends before a fill is done.");
        }
    }

    private void compost() {
        heading("Compost");
        List<CompostNeed> needs = CompostNeed.of(season);
        for (CompostNeed need : needs) {
            boolean atEnd = need.until().equals(season.last());
            String what = atEnd
                    ? "Whole season: " + figures.mass(need.neededKg()) + " needed"
                    : "By " + Figures.day(need.until()) + ": " + figures.mass(need.neededKg())
                            + " needed for fields whose windows close by then";
            entry(what + ", " + figures.mass(need.stockKg()) + " on hand");
            if (need.shortKg() > 0) {
                cautions.add("Compost is " + figures.mass(need.shortKg()) + " short"
                        + (atEnd ? "." : " by " + Figures.day(need.until()) + ".")
                        + (season.goals().untreatedDays().isPresent()
                                ? " Fields may be planted without extract (`goals.untreated`)."
                                : ""));
            }
        }
    }

    private void fixed() {
        FixedSummary fixed = new FixedSummary(season, figures);
        section("Fixed (`fixed`)", fixed.entries());
        cautions.addAll(fixed.cautions());
    }

    private void rigs() {
        RigSummary rigs = new RigSummary(season, figures);
        heading(rigs.heading());
        rigs.entries().forEach(this::entry);
        cautions.addAll(rigs.cautions());
    }

    private void prices() {
        section("Prices that plans are judged by (`costs`, `goals.by: money`)", prices.entries());
        cautions.addAll(prices.cautions());
    }

    private void section(String heading, List<String> entries) {
        if (!entries.isEmpty()) {
            heading(heading);
            entries.forEach(this::entry);
        }
    }

    private void heading(String heading) {
        lines.add("");
        lines.add(heading);
    }

    private void entry(String text) {
        lines.add("  " + text);
    }
}
