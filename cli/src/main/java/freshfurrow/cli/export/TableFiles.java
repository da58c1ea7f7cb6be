package freshfurrow.cli.export;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A plan as tables, in the units of its season; each unit stands in its column's header. */
public final class TableFiles {
    static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    private static final int DECIMALS = 2;

    private final Season season;
    private final Plan plan;
    private final PlanIndex index;
    private final DisplayUnits units;
    private final Told told;

    public TableFiles(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
        index = new PlanIndex(plan);
        units = plan.season().units();
        told = Told.of(season, plan);
    }

    /** A row for each field of the season, in its order. */
    public String fields() {
        return new FieldTable(season, plan).text();
    }

    /** A row for each load, in the order of their transfers. */
    public String loads() {
        String volume = " (" + units.volume().symbol() + ")";
        List<String> headers = new ArrayList<>(List.of(
                "id",
                "planter",
                "rig",
                "recipe",
                "fill starts",
                "fill ends",
                "at",
                "load" + volume,
                "make-up water" + volume,
                "area (" + units.area().symbol() + ")",
                "batches",
                "use by",
                "last drop",
                "margin (min)",
                "dumped" + volume));
        if (told.work()) {
            headers.add("work");
        }
        CsvText csv = new CsvText(headers);
        Map<String, Activity.Fill> fills = fills();
        for (Plan.Load load : plan.loads()) {
            Optional<Activity.Fill> fill = Optional.ofNullable(fills.get(load.id()));
            csv.text(load.id())
                    .text(load.planter())
                    .text(load.rig())
                    .text(load.recipe())
                    .text(time(fill.map(Activity.Fill::start)))
                    .text(time(fill.map(Activity.Fill::end)))
                    .text(fill.map(Activity.Fill::at).orElse(""))
                    .number(volume(load.litres()))
                    .number(index.makeUpWaterL(load).stream()
                            .mapToObj(this::volume)
                            .findFirst()
                            .orElse(""))
                    .number(area(OnBoard.wholeAreaHa(plan, load)))
                    .text(String.join(" ", load.batches()))
                    .text(TIME.format(load.deadline()))
                    .text(TIME.format(load.lastDrop()))
                    .number(CsvText.figure((double) plan.margin(load).toSeconds() / MINUTE_S, DECIMALS))
                    .number(volume(load.dumpedL()));
            if (told.work()) {
                csv.text(WorkWords.of(index.workOf(load.planter())).done());
            }
            csv.endRow();
        }
        return csv.toString();
    }

    /** A row for each batch, in the order of the plan. */
    public String batches() {
        CsvText csv = new CsvText(List.of(
                "id",
                "rig",
                "at",
                "start",
                "end",
                "compost (" + units.mass().symbol() + ")",
                "lots (" + units.mass().symbol() + ")",
                "water (" + units.volume().symbol() + ")",
                "loads",
                "use by"));
        Map<String, String> places = places();
        for (Plan.Batch batch : plan.batches()) {
            csv.text(batch.id())
                    .text(batch.rig())
                    .text(places.getOrDefault(batch.id(), ""))
                    .text(TIME.format(batch.start()))
                    .text(TIME.format(batch.end()))
                    .number(mass(batch.compostKg()))
                    .text(batch.lots().entrySet().stream()
                            .map(lot -> lot.getKey() + " " + mass(lot.getValue()))
                            .collect(Collectors.joining("; ")))
                    .number(volume(batch.waterL()))
                    .text(String.join(" ", index.loadsOf(batch)))
                    .text(time(index.useBy(batch)))
                    .endRow();
        }
        return csv.toString();
    }

    private Map<String, Activity.Fill> fills() {
        Map<String, Activity.Fill> fills = new HashMap<>();
        plan.planters().values().forEach(planter -> planter.activities().forEach(activity -> {
            if (activity instanceof Activity.Fill fill) {
                fills.put(fill.load(), fill);
            }
        }));
        return fills;
    }

    private Map<String, String> places() {
        Map<String, String> places = new HashMap<>();
        plan.rigs().values().forEach(rig -> rig.activities().forEach(activity -> {
            if (activity instanceof Activity.Extract extract) {
                places.put(extract.batch(), extract.at());
            }
        }));
        return places;
    }

    private String area(double hectares) {
        return FieldTable.area(units, hectares);
    }

    private String volume(double litres) {
        return CsvText.figure(units.volume().fromLitres(litres), DECIMALS);
    }

    private String mass(double kilograms) {
        return CsvText.figure(units.mass().fromKilograms(kilograms), DECIMALS);
    }

    private static String time(Optional<LocalDateTime> time) {
        return time.map(TIME::format).orElse("");
    }
}
