package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.safety.Hazards;
import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.SeasonTime;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Cautions for each day's work. Most are those of many days, so that days name them by their position. */
final class CautionData {
    private CautionData() {}

    static void write(ObjectNode data, Season season, Plan plan, SeasonTime time) {
        Hazards hazards = new Hazards(new PlanIndex(plan));
        Cautions cautions = new Cautions(new Figures(season.units()));
        data.put("firstOfAll", Cautions.FIRST);
        ArrayNode texts = data.putArray("cautions");
        ObjectNode byDay = data.putObject("cautionsByDay");
        Map<String, Integer> positions = new LinkedHashMap<>();
        for (LocalDate date :
                season.first().datesUntil(season.last().plusDays(1)).toList()) {
            List<Hazard> ofDay = hazards.on(date);
            if (!ofDay.isEmpty()) {
                ArrayNode day = byDay.putArray(Long.toString(time.day(date)));
                for (Hazard hazard : ofDay) {
                    String text = cautions.text(hazard);
                    Integer position = positions.get(text);
                    if (position == null) {
                        position = positions.size();
                        positions.put(text, position);
                        texts.addObject().put("text", text).put("over", hazard.isOverLimit());
                    }
                    day.add(position);
                }
            }
        }
    }
}
