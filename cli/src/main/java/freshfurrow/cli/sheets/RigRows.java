package freshfurrow.cli.sheets;

import freshfurrow.cli.sheets.Row.Blank;
import freshfurrow.cli.sheets.Row.Part;
import freshfurrow.cli.sheets.Row.Weight;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.LoadingText;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What only a rig does, as steps. The place is told where it is not known from the step before.
 *
 * @param id of the rig
 * @param severalLots whether its batches of the day are not all of the same lot
 */
record RigRows(Words words, String id, boolean severalLots) {
    Row draw(Activity.Draw draw, Optional<String> known) {
        return new Row(
                words.begins(draw),
                Weight.TICKED,
                words.at(
                        known,
                        draw.at(),
                        Part.verb("Draw"),
                        Part.text(" " + words.figures().volume(draw.litres()))),
                Optional.empty(),
                List.of(words.volume()));
    }

    Row load(Activity.LoadCompost loading, Optional<String> known) {
        Figures figures = words.figures();
        return new Row(
                words.begins(loading),
                Weight.TICKED,
                words.at(
                        known,
                        loading.at(),
                        Part.verb("Load"),
                        Part.text(" " + figures.mass(loading.kg()) + " of " + loading.lot()
                                + new LoadingText(figures).buckets(loading.kg(), bucketKg(id)))),
                Optional.empty(),
                List.of(words.mass()));
    }

    Row batch(Activity.Extract extract, Optional<String> known) {
        Plan.Batch batch = words.index().batch(extract.batch());
        Figures figures = words.figures();

        return new Row(
                words.begins(extract),
                Weight.TICKED,
                words.at(
                        known,
                        extract.at(),
                        Part.verb("Batch"),
                        Part.text(" " + batch.id() + ": " + figures.mass(batch.compostKg()) + lots(batch)
                                + new LoadingText(figures).buckets(batch.compostKg(), bucketKg(batch.rig()))
                                + " in " + figures.volume(batch.waterL()))),
                words.index().useBy(batch).flatMap(words::useBy),
                List.of(words.mass(), words.volume()));
    }

    Row transfer(Activity.Transfer transfer, Optional<String> known) {
        Plan.Load load = words.index().load(transfer.load());
        Figures figures = words.figures();
        String mixed = words.index().makeUpWaterL(load).stream()
                .mapToObj(waterL -> ": " + figures.volume(load.litres() - waterL) + " + " + figures.volume(waterL))
                .findFirst()
                .orElseGet(() -> " from " + String.join(", ", load.batches()) + ", mixed together with load "
                        + String.join(", ", words.index().sharers(load)));
        boolean sprays = words.index().isForItself(load);
        return new Row(
                words.begins(transfer),
                Weight.TICKED,
                words.at(
                        known,
                        transfer.at(),
                        Part.verb(sprays ? "Get ready to spray" : "Transfer"),
                        Part.text(" " + load.id() + (sprays ? " with " : " to ")),
                        Part.name(load.planter()),
                        Part.text(mixed)),
                words.useBy(load.deadline()),
                List.of(new Blank("of " + figures.volume(transfer.litres()))));
    }

    Row dump(Activity.Dump dump, Optional<String> known) {
        return new Row(
                words.begins(dump),
                Weight.TICKED,
                words.at(
                        known,
                        dump.at(),
                        Part.verb("Dump"),
                        Part.text(" " + words.figures().volume(dump.litres())
                                + " of mix that is too old, only where local rules allow it")),
                Optional.empty(),
                List.of(words.volume()));
    }

    Row clean(Activity.Clean clean) {
        return new Row(
                words.begins(clean),
                Weight.MINOR,
                List.of(Part.verb("Clean"), Part.text(" drum and strainer")),
                Optional.empty(),
                List.of());
    }

    Row setUp(Activity.SetUp setUp, Optional<String> known) {
        return minor(setUp, "Set up", known);
    }

    Row closeUp(Activity.CloseUp closeUp, Optional<String> known) {
        return minor(closeUp, "Close up", known);
    }

    private Row minor(Activity activity, String verb, Optional<String> known) {
        return new Row(
                words.begins(activity),
                Weight.MINOR,
                words.at(known, activity.at(), Part.verb(verb)),
                Optional.empty(),
                List.of());
    }

    private OptionalDouble bucketKg(String rig) {
        Plan.RigPlan plan = words.index().plan().rigs().get(rig);
        return plan == null ? OptionalDouble.empty() : plan.bucketKg();
    }

    private String lots(Plan.Batch batch) {
        if (!severalLots) {
            return "";
        }
        if (batch.lots().size() == 1) {
            return " from " + String.join("", batch.lots().keySet());
        }
        return batch.lots().entrySet().stream()
                .map(lot -> words.figures().mass(lot.getValue()) + " from " + lot.getKey())
                .collect(Collectors.joining(", ", ": ", ""));
    }
}
