package freshfurrow.desk.today;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.log.DayOfWork;
import freshfurrow.cli.text.Figures;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Unanswered;
import freshfurrow.model.progress.StoppedWork;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.TypedQuantity;
import freshfurrow.model.quantity.WrittenQuantity;
import freshfurrow.model.write.LineOfFact;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is asked about tanks when work stops, and the lines for the log that the answers make. */
final class StoppedData {
    private final DisplayUnits units;
    private final Figures figures;

    private StoppedData(DisplayUnits units) {
        this.units = units;
        figures = new Figures(units);
    }

    /**
     * Tanks with what is in them by the plan, and lines.
     *
     * @param order when work stops, and what was found left in tanks, as it was typed, by machine
     * @throws Unanswered when that is no volume, or no line can say it
     */
    static ObjectNode of(DayOfWork work, JsonNode order) {
        LocalDateTime at = Json.time(Json.needed(order, "at"));
        ObjectNode answer = Json.object();
        ArrayNode tanks = answer.putArray("tanks");
        ArrayNode lines = answer.putArray("lines");
        work.plan().ifPresent(plan -> {
            StoppedData data = new StoppedData(work.season().units());
            StoppedWork stopped = StoppedWork.of(work.season(), plan, work.log(), at);
            stopped.tanks().forEach(tank -> tanks.addObject()
                    .put("machine", tank.planter())
                    .put("load", tank.load())
                    .put("amount", data.shown(tank.litres())));
            data.lines(lines, stopped, data.found(stopped.tanks(), order.path("left")));
        });
        return answer;
    }

    private void lines(ArrayNode lines, StoppedWork stopped, Map<String, Double> leftL) {
        LineOfFact line = new LineOfFact(units);
        stopped.facts(leftL).forEach(done -> {
            ObjectNode cells = lines.addObject();
            line.cells(done.at(), done.fact()).forEach((column, text) -> cells.put(column.title(), text));
        });
    }

    /** What was found otherwise than by the plan, L by machine. */
    private Map<String, Double> found(List<StoppedWork.Tank> tanks, JsonNode left) {
        Map<String, Double> found = new HashMap<>();
        for (StoppedWork.Tank tank : tanks) {
            Json.text(left, tank.planter())
                    .filter(typed -> !typed.isBlank() && !typed.equals(shown(tank.litres())))
                    .ifPresent(typed -> found.put(tank.planter(), litres(tank, typed)));
        }
        return found;
    }

    private double litres(StoppedWork.Tank tank, String typed) {
        double litres = TypedQuantity.asWritten(
                        typed, Kind.VOLUME, units.volume().symbol())
                .flatMap(WrittenQuantity::parse)
                .map(written -> Kind.VOLUME.toSi(written.figure(), written.unit()))
                .orElseThrow(() -> Unanswered.senseless(
                        "'" + typed + "' is not a volume; write it like " + Kind.VOLUME.example(units.area()) + "."));
        if (tank.mayHold(litres)) {
            return litres;
        }
        String its = tank.planter() + "'s tank of load " + tank.load();
        throw Unanswered.senseless(
                tank.begun() || litres > tank.mostL() * 1.001 || litres < 0
                        ? "No " + typed + " can be left in " + its + ": by the plan and the log it is 0 to "
                                + figures.volume(tank.mostL()) + "."
                        : "The log cannot say that nothing of load " + tank.load() + " was planted; say that "
                                + tank.planter() + " is behind the plan instead.");
    }

    /** As it may be typed: nothing parts thousands. */
    private String shown(double litres) {
        return figures.volume(litres).replace(",", "");
    }
}
