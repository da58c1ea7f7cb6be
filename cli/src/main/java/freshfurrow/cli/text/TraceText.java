package freshfurrow.cli.text;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LoadMade;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** From a field back to its loads, batches and lots of compost, and from a lot on to its batches, loads and fields. */
public final class TraceText {
    /** What comes before the record, and is not in it. */
    private static final List<String> FOOTER = List.of(
            "",
            "This shows what was logged; anything taken from the plan is marked \"planned\". Voided entries are left out.",
            "Rules for food crops (in the United States, 21 CFR part 112 on agricultural teas) and licensed professionals",
            "come first; they may ask for more than this record. See docs/safety.md.");

    private static final String INDENT = "  ";

    private final Season season;
    private final List<Entry> standing;
    private final Map<String, LoadMade> loads;
    private final LogSumsText sums;
    private final EntryText text;
    private final Figures figures;
    private final PlannedBatches planned;

    /** @param plan the plan that the loads of the log are of, where there is one */
    public TraceText(Season season, SeasonLog log, Optional<Plan> plan) {
        this.season = season;
        standing = log.standing();
        loads = LogSums.of(season, log).loads();
        sums = new LogSumsText(season, log);
        text = new EntryText(season);
        figures = new Figures(season.units());
        planned = new PlannedBatches(plan, figures);
    }

    /**
     * The trace of a field.
     *
     * @throws IllegalArgumentException when the season has no such field
     */
    public List<String> field(String id) {
        Recipe recipe = sums.recipe(id);
        List<String> lines = new ArrayList<>();
        lines.add("Field " + sums.field(id));
        lines.add("Season " + season.name() + ", crop " + sums.crop(id) + ", recipe " + recipe.id() + ": hold time "
                + Figures.span(Duration.ofSeconds(recipe.holdS())) + " from the end of extraction.");
        lines.add("");
        int before = lines.size();
        boolean worked = false;
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.Planted piece && piece.field().equals(id)) {
                piece(lines, entry, piece);
                worked = true;
            } else if (entry.fact() instanceof Fact.GroundJudged judged
                    && judged.field().equals(id)) {
                lines.add(line(entry));
            }
        }
        if (!worked) {
            lines.add(before, "No " + WorkWords.of(season.field(id).work()).noun() + " of it is logged.");
        }
        lines.addAll(FOOTER);
        return lines;
    }

    /**
     * The trace of a lot of compost.
     *
     * @throws IllegalArgumentException when the season has no such lot
     */
    public List<String> lot(String id) {
        List<String> lines = new ArrayList<>();
        lines.add("Compost lot " + sums.lot(id));
        season.lot(id)
                .ifPresent(lot -> lines.add("Season " + season.name() + ": its file has " + figures.mass(lot.massKg())
                        + " from " + lot.from() + "."));
        lines.add("");
        int before = lines.size();
        for (Entry entry : standing) {
            Fact fact = entry.fact();
            if (fact instanceof Fact.BatchMade batch && batch.kgByLot().containsKey(id)) {
                lines.add(line(entry));
                batch.loads().forEach(load -> planted(lines, load, entry));
                if (batch.loads().isEmpty()) {
                    lines.add(INDENT + "its load was not logged");
                }
            } else if ((fact instanceof Fact.CompostDelivered delivered
                            && delivered.lot().equals(id))
                    || (fact instanceof Fact.CompostSpoiled spoiled
                            && spoiled.lot().equals(id))) {
                lines.add(line(entry));
            }
        }
        plannedOf(lines, id);
        if (lines.size() == before) {
            lines.add("Nothing of it is logged.");
        }
        lines.addAll(FOOTER);
        return lines;
    }

    private void piece(List<String> lines, Entry entry, Fact.Planted planted) {
        lines.add(line(entry));
        if (planted.withoutExtract()) {
            return;
        }
        planned.planter(planted).ifPresent(by -> lines.add(INDENT + by));
        if (planted.load().isEmpty()) {
            lines.add(INDENT + "its load was not logged");
            return;
        }
        LoadMade load = loads.get(planted.load().get());
        sums.age(planted.field(), load.id(), entry.at())
                .ifPresent(age -> lines.add(INDENT + "load " + load.id() + ": " + age));
        load.batches()
                .forEach(batch -> lines.add(INDENT + line(batch) + "; "
                        + Figures.span(Duration.between(batch.at(), entry.at())) + " old at its last use"));
        List<Plan.Batch> plan = planned.of(load.id());
        if (load.batches().isEmpty()) {
            plan.forEach(batch -> lines.add(INDENT + planned.line(batch, entry)));
            if (plan.isEmpty()) {
                lines.add(INDENT + "no batch of load " + load.id() + " is logged, and no plan has it");
            }
        } else if (plan.size() > load.batches().size()) {
            lines.add(INDENT + "load " + load.id() + " was planned with " + plan.size() + " batches, "
                    + load.batches().size() + " logged");
        }
        String others = otherFields(load, planted.field());
        if (!others.isEmpty()) {
            lines.add(INDENT + "load " + load.id() + " also went to " + others);
        }
    }

    /** What was planted from a load of a batch. */
    private void planted(List<String> lines, String id, Entry batch) {
        LoadMade load = loads.get(id);
        for (Entry piece : load.planted()) {
            lines.add(INDENT + line(piece) + "; the batch was " + Figures.span(Duration.between(batch.at(), piece.at()))
                    + " old");
        }
        if (load.planted().isEmpty()) {
            lines.add(INDENT + "no " + WorkWords.of(season).noun() + " from load " + id + " is logged");
        }
    }

    /** Loads that were planted, whose batches are not logged and were planned out of the lot. */
    private void plannedOf(List<String> lines, String lot) {
        for (LoadMade load : loads.values()) {
            if (load.batches().isEmpty()) {
                planned.of(load.id()).stream()
                        .filter(batch -> batch.lots().containsKey(lot))
                        .forEach(batch -> {
                            lines.add(planned.line(batch) + ", for load " + load.id());
                            load.planted().forEach(piece -> lines.add(INDENT + line(piece)));
                        });
            }
        }
    }

    private String otherFields(LoadMade load, String field) {
        return load.planted().stream()
                .map(entry -> ((Fact.Planted) entry.fact()).field())
                .filter(other -> !other.equals(field))
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .map(text::label)
                .collect(Collectors.joining(", "));
    }

    private String line(Entry entry) {
        return EntryText.moment(entry.at()) + "  " + text.words(entry) + " (entry " + entry.number() + ")";
    }
}
