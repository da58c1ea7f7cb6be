package freshfurrow.cli.text;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import freshfurrow.model.text.FieldLabel;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Entries of a log in words. */
final class EntryText {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE uuuu-MM-dd HH:mm", Locale.ENGLISH);

    private final Figures figures;
    private final Map<String, String> labels;
    private final Map<String, Work> works;

    EntryText(Season season) {
        figures = new Figures(season.units());
        labels = season.fields().stream()
                .collect(Collectors.toMap(Field::id, field -> FieldLabel.of(field.id(), field.name())));
        works = season.fields().stream().collect(Collectors.toMap(Field::id, Field::work));
    }

    /** As {@code Mon 2027-05-03 15:10}. */
    static String moment(LocalDateTime time) {
        return MOMENT.format(time);
    }

    /** What people call a place by: its id, and the name of a field that has another one. */
    String label(String place) {
        return labels.getOrDefault(place, place);
    }

    /** What an entry says, without its number and time. */
    String words(Entry entry) {
        return fact(entry.fact())
                + entry.took()
                        .map(took -> ", in " + Figures.toTheSecond(took.toSeconds()))
                        .orElse("")
                + (entry.note().isEmpty() ? "" : ": " + entry.note());
    }

    private String fact(Fact fact) {
        if (fact instanceof Fact.Planted planted) {
            return WorkWords.of(works.getOrDefault(planted.field(), Work.PLANT)).done() + " " + label(planted.field())
                    + ", " + figures.area(planted.areaHa())
                    + planted.planter().map(planter -> ", by " + planter).orElse("")
                    + planted.load().map(load -> ", from load " + load).orElse("")
                    + (planted.withoutExtract() ? ", without extract" : "");
        }
        if (fact instanceof Fact.BatchMade batch) {
            return "batch by " + batch.rig()
                    + batch.place().map(place -> " at " + label(place)).orElse("") + ", " + compost(batch)
                    + (batch.loads().isEmpty() ? "" : ", " + forLoads(batch.loads()));
        }
        if (fact instanceof Fact.Transferred transferred) {
            return "transfer by " + transferred.rig() + ", " + figures.volume(transferred.litres())
                    + transferred.load().map(load -> ", load " + load).orElse("");
        }
        if (fact instanceof Fact.Driven driven) {
            return driven.machine() + " from " + label(driven.from()) + " to " + label(driven.to());
        }
        if (fact instanceof Fact.WaterDrawn drawn) {
            return "drawn at " + drawn.point() + ", " + figures.volume(drawn.litres()) + ", by " + drawn.rig();
        }
        if (fact instanceof Fact.CompostDelivered delivered) {
            return "delivered, " + figures.mass(delivered.kg()) + " of " + delivered.lot();
        }
        if (fact instanceof Fact.CompostSpoiled spoiled) {
            return "spoiled, "
                    + (spoiled.kg().isPresent() ? figures.mass(spoiled.kg().getAsDouble()) : "all that was left")
                    + " of " + spoiled.lot();
        }
        if (fact instanceof Fact.RainMeasured rain) {
            return "rain, " + figures.rain(rain.mm());
        }
        if (fact instanceof Fact.MachineDown down) {
            return down.machine() + " down until " + until(down.until());
        }
        if (fact instanceof Fact.MachineBehind behind) {
            return behind.machine()
                    + (behind.by().isZero()
                            ? " as far as the plan says"
                            : " " + Figures.toTheSecond(behind.by().toSeconds()) + " behind the plan");
        }
        if (fact instanceof Fact.GroundJudged judged) {
            return label(judged.field())
                    + (judged.fit() ? " fit for machines" : " unfit until " + until(judged.until()));
        }
        return fact instanceof Fact.Voided voided ? "voids entry " + voided.entry() : "note";
    }

    /** As {@code 20 lb of windrow and 10 lb of barn}. */
    String compost(Fact.BatchMade batch) {
        return batch.kgByLot().entrySet().stream()
                .map(part -> figures.mass(part.getValue()) + " of " + part.getKey())
                .collect(Collectors.joining(" and "));
    }

    private static String forLoads(List<String> loads) {
        return (loads.size() == 1 ? "for load " : "for loads ") + String.join(", ", loads);
    }

    private static String until(Optional<LocalDateTime> until) {
        return until.map(EntryText::moment).orElse("further notice");
    }
}
