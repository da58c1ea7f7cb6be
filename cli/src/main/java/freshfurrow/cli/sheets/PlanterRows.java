package freshfurrow.cli.sheets;

import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.sheets.Row.Part;
import freshfurrow.cli.sheets.Row.Weight;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.Steps;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.List;
import java.util.Optional;

/** What only a planter does, as steps. The place is told where it is not known from the step before. */
record PlanterRows(Words words) {
    Row fromTheDayBefore(OnBoard left) {
        Figures figures = words.figures();
        return new Row(
                "before",
                Weight.MEASURED,
                List.of(
                        Part.verb("In the tank"),
                        Part.text(" " + figures.volume(left.litres()) + " from the day before for "
                                + figures.area(left.areaHa()) + ", load "
                                + left.load().id() + Steps.inHand(left.load()))),
                words.useBy(left.load().deadline()),
                List.of(words.volume()));
    }

    Row fill(Activity.Fill fill, Optional<String> known) {
        Plan.Load load = words.index().load(fill.load());
        Figures figures = words.figures();
        return new Row(
                words.begins(fill),
                Weight.TICKED,
                words.at(
                        known,
                        fill.at(),
                        Part.verb("Fill"),
                        Part.text(" " + figures.volume(load.litres()) + " from "),
                        Part.name(load.rig()),
                        Part.text(", load " + load.id() + ": "
                                + Steps.lasts(words.index(), load, figures, words.date()))),
                words.useBy(load.deadline()),
                List.of(words.volume()));
    }

    Row plant(Activity.Plant plant) {
        return new Row(
                words.begins(plant),
                Weight.TICKED,
                List.of(
                        Part.verb(WorkWords.capital(words.index()
                                .workOf(words.index().load(plant.load()).planter())
                                .key())),
                        Part.text(" " + words.figures().area(plant.areaHa()) + " in "),
                        words.place(plant.field()),
                        Part.text(fixed(plant) + ", load " + plant.load())),
                words.useBy(words.index().load(plant.load()).deadline()),
                List.of(words.area()));
    }

    Row plant(Activity.PlantWithout planting) {
        return new Row(
                words.begins(planting),
                Weight.TICKED,
                List.of(
                        Part.verb("Plant without extract"),
                        Part.text(" " + words.figures().area(planting.areaHa()) + " in "),
                        words.place(planting.field()),
                        Part.text(fixed(planting))),
                Optional.empty(),
                List.of(words.area()));
    }

    private String fixed(Activity.Planting planting) {
        return words.index().isFixed(planting.field()) ? " (fixed)" : "";
    }

    Row flush(Activity.Flush flush, Optional<String> known) {
        return new Row(
                words.begins(flush),
                Weight.MINOR,
                words.at(known, flush.at(), Part.verb("Flush"), Part.text(" the lines")),
                Optional.empty(),
                List.of());
    }
}
