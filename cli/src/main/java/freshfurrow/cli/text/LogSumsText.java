package freshfurrow.cli.text;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LoadMade;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.LotStock;
import freshfurrow.model.log.PlantedArea;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a log adds up to, in sentences. */
final class LogSumsText {
    private final Season season;
    private final LogSums sums;
    private final Figures figures;
    private final EntryText entries;

    LogSumsText(Season season, SeasonLog log) {
        this.season = season;
        sums = LogSums.of(season, log);
        figures = new Figures(season.units());
        entries = new EntryText(season);
    }

    /** The sums of what the entry is about, whether it counts or is void. */
    List<String> about(Entry entry) {
        Fact fact = entry.fact();
        List<String> lines = new ArrayList<>();
        if (fact instanceof Fact.Planted planted) {
            lines.add(field(planted.field()));
            planted.load().ifPresent(load -> age(planted.field(), load, entry.at())
                    .ifPresent(age -> lines.add("Load " + load + ": " + age + ".")));
        } else if (fact instanceof Fact.BatchMade batch) {
            batch.kgByLot().keySet().forEach(lot -> lines.add(lot(lot)));
            batch.loads().forEach(load -> lines.add(load(load)));
        } else if (fact instanceof Fact.WaterDrawn drawn) {
            lines.add(water(drawn.point(), entry.at().toLocalDate()));
        } else if (fact instanceof Fact.CompostDelivered delivered) {
            lines.add(lot(delivered.lot()));
        } else if (fact instanceof Fact.CompostSpoiled spoiled) {
            lines.add(lot(spoiled.lot()));
        } else if (fact instanceof Fact.GroundJudged judged) {
            lines.add(ground(judged.field()));
        }
        return lines;
    }

    /** What the newest word on a field's ground makes of it. */
    private String ground(String id) {
        List<Judgement> said = sums.judged().getOrDefault(id, List.of());
        if (said.isEmpty()) {
            return entries.label(id) + ": open or closed by rain and weather.";
        }
        Judgement newest = said.get(said.size() - 1);
        return entries.label(id) + ": "
                + (newest.fitFrom().isBefore(season.end())
                        ? "open from " + EntryText.moment(newest.fitFrom()) + " on; rain that begins after "
                                + EntryText.moment(newest.said()) + " counts again."
                        : "closed until somebody logs that it is fit.");
    }

    /** How much of a field is planted. */
    String field(String id) {
        PlantedArea area = known(sums.fields().get(id), id);
        String label = entries.label(id) + ": ";
        return area.isWhole()
                ? label + "finished, " + figures.area(area.fieldHa()) + " " + done(id) + "."
                : label + figures.area(area.plantedHa()) + " of " + figures.area(area.fieldHa()) + " " + done(id) + ", "
                        + figures.area(area.leftHa()) + " left.";
    }

    private String done(String field) {
        return WorkWords.of(seasonField(field).work()).done();
    }

    /** What became of a lot of compost. */
    String lot(String id) {
        LotStock stock = known(sums.lots().get(id), id);
        double goneKg = stock.usedKg() + stock.spoiledKg();
        return id + ": " + figures.mass(stock.usedKg()) + " used, "
                + (stock.spoiledKg() > 0 ? figures.mass(stock.spoiledKg()) + " spoiled, " : "")
                + figures.mass(stock.leftKg()) + " of " + figures.mass(stock.inKg()) + " left"
                + (goneKg > stock.inKg() * (1 + 1e-9)
                        ? "; the log has " + figures.mass(goneKg - stock.inKg()) + " more than there was."
                        : ".");
    }

    /**
     * How old a load was when a piece of the field was planted from it, against the hold time of the field's recipe; empty when no
     * batch of it is logged.
     */
    Optional<String> age(String field, String load, LocalDateTime planted) {
        return Optional.ofNullable(sums.loads().get(load))
                .flatMap(LoadMade::oldestBatchEnd)
                .map(end -> age(recipe(field), Duration.between(end, planted)));
    }

    /** An age at use against the hold time of a recipe. */
    static String age(Recipe recipe, Duration age) {
        Duration hold = Duration.ofSeconds(recipe.holdS());
        String against = "hold time of " + recipe.id() + " " + Figures.span(hold);
        return age.compareTo(hold) > 0
                ? "TOO OLD: used up to " + Figures.span(age) + " after its oldest batch (" + against + ")"
                : "used up to " + Figures.span(age) + " after its oldest batch (" + against + ")";
    }

    /** The recipe of a field. */
    Recipe recipe(String field) {
        return season.recipe(seasonField(field).recipe());
    }

    /** The crop of a field. */
    String crop(String field) {
        return seasonField(field).crop();
    }

    private Field seasonField(String id) {
        return season.field(id);
    }

    private String load(String id) {
        LoadMade load = sums.loads().get(id);
        int count = load == null ? 0 : load.batches().size();
        double kg = load == null
                ? 0
                : load.batches().stream()
                        .mapToDouble(entry -> entry.fact() instanceof Fact.BatchMade batch ? batch.compostKg() : 0)
                        .sum();
        return "Load " + id + ": " + Figures.count(count, "batch", "batches") + " logged, " + figures.mass(kg)
                + " of compost in total.";
    }

    private String water(String id, LocalDate date) {
        String limit = season.waterPoint(id).dailyLimitL().stream()
                .mapToObj(limitL -> ", of " + figures.volume(limitL) + " a day")
                .findFirst()
                .orElse("");
        return id + ": " + figures.volume(sums.drawnL(id, date)) + " drawn on " + Figures.day(date) + limit + ".";
    }

    private static <T> T known(T found, String id) {
        if (found == null) {
            throw new IllegalArgumentException("the season has no " + id);
        }
        return found;
    }
}
