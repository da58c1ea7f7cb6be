package freshfurrow.cli.export;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.cli.text.FieldDone;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a plan does with each field, as a table. */
final class FieldTable {
    private static final int AREA_DECIMALS = 3;

    private final Season season;
    private final Plan plan;
    private final DisplayUnits units;
    private final Told told;

    FieldTable(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
        units = plan.season().units();
        told = Told.of(season, plan);
    }

    /** A row for each field of the season, in its order. */
    String text() {
        String area = " (" + units.area().symbol() + ")";
        List<String> headers = new ArrayList<>(List.of(
                "id",
                "name",
                "crop",
                "recipe",
                "area" + area,
                "window first",
                "window last",
                "planted from",
                "planted until",
                "planted" + area,
                "days to spare",
                "late (" + units.area().symbol() + "-days)",
                "planters",
                "loads",
                "not planted" + area,
                "why not planted"));
        if (told.either()) {
            headers.add("work");
        }
        if (told.withoutExtract()) {
            headers.addAll(List.of("with extract" + area, "without extract" + area));
        }
        CsvText csv = new CsvText(headers);
        for (FieldWork work : FieldWork.of(season, plan)) {
            csv.text(work.field().id())
                    .text(work.field().name())
                    .text(work.field().crop())
                    .text(work.field().recipe())
                    .number(area(work.field().areaHa()))
                    .text(work.field().window().first().toString())
                    .text(work.field().window().last().toString())
                    .text(time(work.start()))
                    .text(time(work.end()))
                    .number(area(work.plantedHa()))
                    .number(work.daysToSpare().map(String::valueOf).orElse(""))
                    .number(area(work.lateHaDays()))
                    .text(String.join(" ", work.planters()))
                    .text(String.join(" ", work.loads()))
                    .number(area(work.unserved().map(Plan.Unserved::areaHa).orElse(0.0)))
                    .text(work.unserved().map(Plan.Unserved::why).orElse(""));
            if (told.either()) {
                csv.text(FieldDone.words(work));
            }
            if (told.withoutExtract()) {
                csv.number(area(work.withExtractHa())).number(area(work.withoutExtractHa()));
            }
            csv.endRow();
        }
        return csv.toString();
    }

    private String area(double hectares) {
        return area(units, hectares);
    }

    static String area(DisplayUnits units, double hectares) {
        return CsvText.figure(units.area().fromHectares(hectares), AREA_DECIMALS);
    }

    private static String time(Optional<LocalDateTime> time) {
        return time.map(TableFiles.TIME::format).orElse("");
    }
}
