package freshfurrow.cli.page;

import static freshfurrow.cli.page.Numbers.rounded;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.FieldReasons;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.FixedField;
import freshfurrow.cli.text.GroundText;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.SeasonTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The fields and crops, and what the plan does with each field. */
final class FieldData {
    private FieldData() {}

    static void write(ObjectNode data, Season season, Plan plan, SeasonTime time) {
        List<String> crops = List.copyOf(
                new LinkedHashSet<>(season.fields().stream().map(Field::crop).toList()));
        ArrayNode names = data.putArray("crops");
        crops.forEach(names::add);
        Map<String, List<Activity.Planting>> plantings = plantingsByField(plan);
        Map<String, String> reasons = FieldReasons.of(season, plan);
        Figures figures = new Figures(season.units());
        ArrayNode fields = data.putArray("fields");
        for (Field field : season.fields()) {
            ObjectNode node = fields.addObject()
                    .put("id", field.id())
                    .put("name", field.name())
                    .put("ha", rounded(field.areaHa()))
                    .put("crop", crops.indexOf(field.crop()))
                    .put("work", field.work().key())
                    .put("opens", time.day(field.window().first()))
                    .put("closes", time.day(field.window().last()))
                    .put("drainage", SeasonData.name(field.drainage()));
            if (!field.fixed().equals(Fixed.NOT)) {
                node.put("fixed", FixedField.words(field.fixed()));
            }
            if (!field.judged().isEmpty()) {
                node.put(
                        "said",
                        field.judged().stream()
                                .map(judgement -> GroundText.said(judgement, season, figures))
                                .collect(Collectors.joining("; ")));
            }
            SeasonData.at(node, field.at());
            SeasonData.rings(node, field.outline());
            List<Activity.Planting> own = plantings.getOrDefault(field.id(), List.of());
            if (!own.isEmpty()) {
                node.put("from", time.seconds(own.get(0).start()))
                        .put("to", time.seconds(own.get(own.size() - 1).end()))
                        .put("lastDay", time.day(own.get(own.size() - 1).start().toLocalDate()));
            }
            String why = reasons.get(field.id());
            if (why != null) {
                node.put("why", why);
            }
        }
        plan.unserved().forEach(left -> leave(fields, left));
    }

    private static void leave(ArrayNode fields, Plan.Unserved left) {
        for (var field : fields) {
            if (field.get("id").textValue().equals(left.field())) {
                ((ObjectNode) field).put("leftHa", rounded(left.areaHa()));
            }
        }
    }

    private static Map<String, List<Activity.Planting>> plantingsByField(Plan plan) {
        Map<String, List<Activity.Planting>> byField = new HashMap<>();
        for (Plan.PlanterPlan planter : plan.planters().values()) {
            for (Activity activity : planter.activities()) {
                if (activity instanceof Activity.Planting planting) {
                    byField.computeIfAbsent(planting.field(), id -> new ArrayList<>())
                            .add(planting);
                }
            }
        }
        return byField;
    }
}
