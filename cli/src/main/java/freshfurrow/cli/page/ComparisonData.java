package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.ComparisonReport;
import freshfurrow.cli.text.ComparisonWords;
import freshfurrow.cli.text.MeasureText;
import freshfurrow.cli.text.ReserveReport;
import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.ComparedVariant;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.PairedDifference;
import freshfurrow.model.compare.Spread;
import freshfurrow.model.compare.VariantSummary;
import java.util.List;

/** What the page of a comparison shows: figures in the units of its people, and the words of the text. */
final class ComparisonData {
    private ComparisonData() {}

    static JsonNode of(ComparedSprings compared) {
        MeasureText text = new MeasureText(compared.rules());
        List<VariantSummary> summaries = compared.summaries();
        ObjectNode data = JsonNodeFactory.instance
                .objectNode()
                .put("springs", ComparisonReport.springs(compared))
                .put("rule", ComparisonReport.rule(compared))
                .put("file", compared.rules().file())
                .put("first", compared.rules().first().toString())
                .put("clock", compared.rules().units().clock().symbol());
        ArrayNode words = data.putArray("words");
        ComparisonWords.of(compared).forEach(words::add);
        ReserveReport.of(compared).ifPresent(reserves -> reserves(data.putObject("reserves"), reserves));
        ArrayNode variants = data.putArray("variants");
        for (int i = 0; i < summaries.size(); i++) {
            variants.addObject()
                    .put("name", summaries.get(i).name())
                    .put("sha256", compared.variants().get(i).sha256())
                    .put("inside", ComparisonReport.chance(summaries.get(i).insideWindows()))
                    .put(
                            "money",
                            summaries
                                    .get(i)
                                    .money()
                                    .map(money -> text.money(money.season()))
                                    .orElse(""));
        }
        ArrayNode measures = data.putArray("measures");
        for (Measure measure : compared.rules().measures()) {
            measures.add(measure(compared, summaries, text, measure));
        }
        return data;
    }

    private static void reserves(ObjectNode node, ReserveReport reserves) {
        reserves.headings().forEach(node.putArray("headings")::add);
        ArrayNode rows = node.putArray("rows");
        reserves.rows().forEach(row -> row.forEach(rows.addArray()::add));
        reserves.said().forEach(node.putArray("said")::add);
    }

    private static ObjectNode measure(
            ComparedSprings compared, List<VariantSummary> summaries, MeasureText text, Measure measure) {
        ObjectNode node = JsonNodeFactory.instance
                .objectNode()
                .put("label", text.label(measure))
                .put("dates", measure == Measure.FINISH);
        ArrayNode variants = node.putArray("variants");
        for (int i = 0; i < summaries.size(); i++) {
            Spread spread = summaries.get(i).spread(measure);
            ObjectNode variant = variants.addObject()
                    .put("text", text.spread(measure, spread))
                    .put("low", Numbers.rounded(text.figure(measure, spread.low())))
                    .put("median", Numbers.rounded(text.figure(measure, spread.median())))
                    .put("high", Numbers.rounded(text.figure(measure, spread.high())));
            PairedDifference difference = summaries.get(i).differences().get(measure);
            if (difference != null) {
                variant.put("difference", text.differenceWithInterval(measure, difference))
                        .put("apart", summaries.get(i).toldApart(measure));
            }
            ArrayNode figures = variant.putArray("figures");
            ComparedVariant lived = compared.variants().get(i);
            lived.lived()
                    .springs()
                    .forEach(spring -> figures.add(Numbers.rounded(text.figure(measure, measure.of(spring)))));
        }
        return node;
    }
}
