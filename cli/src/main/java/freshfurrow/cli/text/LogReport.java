package freshfurrow.cli.text;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.PlantedArea;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A season's log as text. */
public final class LogReport {
    private static final int WIDTH = 100;

    private LogReport() {}

    /** New entries, and what the log now adds up to in what each is about. */
    public static List<String> added(Season season, SeasonLog log, List<Entry> entries) {
        return entries.stream()
                .flatMap(entry -> added(season, log, entry).stream())
                .toList();
    }

    /** New entries one below the other, and what the log now adds up to. */
    public static List<String> addedTogether(Season season, SeasonLog log, List<Entry> entries) {
        if (entries.isEmpty()) {
            return List.of("Nothing to add: the log has all that the plan says was done by then.");
        }
        EntryText text = new EntryText(season);
        List<String> lines = new ArrayList<>();
        entries.forEach(entry -> lines.add(line(text, entry)));
        lines.add("");
        lines.addAll(sums(season, log));
        return lines;
    }

    /** One entry, as {@code Entry 3, Thu 2027-04-22 08:05: batch by R1, 27 lb of windrow}. */
    public static String line(Season season, Entry entry) {
        return line(new EntryText(season), entry);
    }

    private static String line(EntryText text, Entry entry) {
        return "Entry " + entry.number() + ", " + EntryText.moment(entry.at()) + ": " + text.words(entry);
    }

    private static List<String> added(Season season, SeasonLog log, Entry entry) {
        String line = line(new EntryText(season), entry);
        Entry about = entry.fact() instanceof Fact.Voided voided
                ? log.entries().stream()
                        .filter(one -> one.number() == voided.entry())
                        .findFirst()
                        .orElseThrow()
                : entry;
        return Stream.concat(Stream.of(line), new LogSumsText(season, log).about(about).stream())
                .toList();
    }

    /** All entries in the order of the log, and what those that hold add up to. */
    public static List<String> list(Season season, SeasonLog log) {
        if (log.entries().isEmpty()) {
            return List.of("The log is empty.");
        }
        EntryText text = new EntryText(season);
        Map<Integer, Integer> voidedBy = new HashMap<>();
        log.entries().forEach(entry -> {
            if (entry.fact() instanceof Fact.Voided voided) {
                voidedBy.put(voided.entry(), entry.number());
            }
        });
        Table table = new Table(WIDTH, List.of(Table.Column.right("Entry"), Table.Column.left("Time")), "Fact");
        for (Entry entry : log.entries()) {
            Integer by = voidedBy.get(entry.number());
            table.row(
                    List.of(String.valueOf(entry.number()), EntryText.moment(entry.at())),
                    List.of((by == null ? "" : "(void: see entry " + by + ") ") + text.words(entry)));
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        lines.addAll(sums(season, log));
        return lines;
    }

    private static List<String> sums(Season season, SeasonLog log) {
        LogSums sums = LogSums.of(season, log);
        Figures figures = new Figures(season.units());
        Collection<PlantedArea> fields = sums.fields().values();
        double all = fields.stream().mapToDouble(PlantedArea::fieldHa).sum();
        double left = fields.stream().mapToDouble(PlantedArea::leftHa).sum();
        long whole = fields.stream().filter(PlantedArea::isWhole).count();
        List<String> lines = new ArrayList<>();
        lines.add(WorkWords.capital(WorkWords.of(season).done()) + " " + figures.area(all - left) + " of "
                + figures.area(all) + "; " + whole + " of " + Figures.count(fields.size(), "field", "fields")
                + " finished.");
        LogSumsText text = new LogSumsText(season, log);
        sums.lots().keySet().forEach(lot -> lines.add(text.lot(lot)));
        return lines;
    }
}
