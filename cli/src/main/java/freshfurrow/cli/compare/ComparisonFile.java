package freshfurrow.cli.compare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.compare.Chance;
import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.ComparedVariant;
import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.Money;
import freshfurrow.model.compare.PairedDifference;
import freshfurrow.model.compare.Spread;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.compare.VariantSummary;
import freshfurrow.model.season.Work;
import java.util.ArrayList;
import java.util.List;

/** A comparison as JSON; the same comparison always gives the same text. */
public final class ComparisonFile {
    /** What the key {@code format} of the file says. */
    public static final String FORMAT = "freshfurrow-compare/1";

    private static final List<String> COLUMNS = List.of(
            "spring",
            "finishS",
            "lateHaDays",
            "unservedHa",
            "fills",
            "waterTrips",
            "waitH",
            "rigUse",
            "dumpedKg",
            "compostKg",
            "workH",
            "driveKm",
            "runningCost");

    /** The figures that follow where any variant may plant without extract. */
    private static final List<String> UNTREATED_COLUMNS = List.of("untreatedHa", "treatedShare");

    /** The figures that follow last where times vary. */
    private static final List<String> TIMES_VARY_COLUMNS = List.of("staleLoads");

    private ComparisonFile() {}

    /** The figures of a spring, in the order of its row. */
    static List<String> columns(LivingRules rules) {
        List<String> columns = new ArrayList<>(COLUMNS);
        if (rules.untreated()) {
            columns.addAll(UNTREATED_COLUMNS);
        }
        if (rules.timesVary()) {
            columns.addAll(TIMES_VARY_COLUMNS);
        }
        return columns;
    }

    /** The text of the file, ending in a newline: one spring of one variant a line. */
    public static String toJson(ComparedSprings compared) {
        return new ComparisonText().of(tree(compared));
    }

    static ObjectNode tree(ComparedSprings compared) {
        ObjectNode top = JsonNodeFactory.instance.objectNode().put("format", FORMAT);
        top.set("rules", rules(compared.rules()));
        top.put("springs", compared.numbers().size());
        List<VariantSummary> summaries = compared.summaries();
        ArrayNode variants = top.putArray("variants");
        for (int i = 0; i < summaries.size(); i++) {
            variants.add(variant(compared, compared.variants().get(i), summaries.get(i)));
        }
        return top;
    }

    private static ObjectNode rules(LivingRules rules) {
        ObjectNode node = JsonNodeFactory.instance
                .objectNode()
                .put("season", rules.season())
                .put("file", rules.file())
                .put("first", rules.first().toString())
                .put("last", rules.last().toString());
        node.putObject("units")
                .put("area", rules.units().area().symbol())
                .put("volume", rules.units().volume().symbol())
                .put("mass", rules.units().mass().symbol())
                .put("distance", rules.units().distance().symbol());
        if (!rules.units().hasUsualClock()) {
            node.put("clock", rules.units().clock().symbol());
        }
        rules.currency().ifPresent(code -> node.put("currency", code));
        if (rules.works().contains(Work.SPRAY)) {
            ArrayNode works = node.putArray("works");
            rules.works().stream().sorted().map(Work::key).forEach(works::add);
        }
        if (rules.untreated()) {
            node.put("untreated", true);
        }
        if (rules.timesVary()) {
            node.put("timesVary", true);
        }
        return node.put("weather", rules.weather())
                .put("recorded", rules.recorded())
                .put("seed", rules.seed())
                .put("steps", rules.steps())
                .put("forecastDays", rules.forecastDays())
                .put("replanDays", rules.replanDays());
    }

    private static ObjectNode variant(ComparedSprings compared, ComparedVariant variant, VariantSummary summary) {
        ObjectNode node = JsonNodeFactory.instance
                .objectNode()
                .put("name", variant.lived().name())
                .put("sha256", variant.sha256());
        variant.lived().yearlyCost().ifPresent(cost -> node.put("yearlyCost", cost));
        variant.reserve().ifPresent(reserve -> node.putObject("reserve")
                .put("reserveS", reserve.reserveS())
                .put("compostKgPerHa", reserve.compostKgPerHa()));
        node.set("insideWindows", chance(summary.insideWindows()));
        ObjectNode spreads = node.putObject("spread");
        summary.spreads().forEach((measure, spread) -> spreads.set(key(measure), spread(spread)));
        if (!summary.differences().isEmpty()) {
            ObjectNode differences = node.putObject("lessBase");
            summary.differences()
                    .forEach((measure, difference) -> differences.set(key(measure), difference(difference)));
        }
        ObjectNode luck = node.putObject("planLuck");
        variant.lived().luck().forEach((measure, deviation) -> luck.put(key(measure), deviation));
        summary.money().ifPresent(money -> node.set("money", money(money)));
        ObjectNode limits = node.putObject("limits");
        variant.limits().forEach(share -> limits.putObject(share.resource().key())
                .put("shareOfLate", share.ofLate())
                .put("shareOfWait", share.ofWait()));
        variant.foresight().ifPresent(foresight -> node.putObject("foresight")
                .put("springs", foresight.springs())
                .put("lateHaDays", foresight.lateHaDays())
                .put("unservedHa", foresight.unservedHa())
                .put("livedLateHaDays", foresight.livedLateHaDays())
                .put("livedUnservedHa", foresight.livedUnservedHa()));
        ArrayNode columns = node.putArray("columns");
        columns(compared.rules()).forEach(columns::add);
        ArrayNode rows = node.putArray("rows");
        for (int i = 0; i < compared.numbers().size(); i++) {
            rows.add(row(compared.numbers().get(i), variant.lived().springs().get(i), compared.rules()));
        }
        return node;
    }

    private static ArrayNode row(int number, SpringFigures spring, LivingRules rules) {
        ArrayNode row = JsonNodeFactory.instance
                .arrayNode()
                .add(number)
                .add(spring.finishS())
                .add(spring.lateHaDays())
                .add(spring.unservedHa())
                .add(spring.fills())
                .add(spring.waterTrips())
                .add(spring.waitH())
                .add(spring.rigUse())
                .add(spring.dumpedKg())
                .add(spring.compostKg())
                .add(spring.workH())
                .add(spring.driveKm());
        if (spring.runningCost().isPresent()) {
            row.add(spring.runningCost().getAsDouble());
        } else {
            row.addNull();
        }
        if (rules.untreated()) {
            row.add(spring.untreatedHa()).add(spring.treatedShare());
        }
        if (rules.timesVary()) {
            row.add(spring.staleLoads());
        }
        return row;
    }

    static String key(Measure measure) {
        return switch (measure) {
            case FINISH -> "finishS";
            case LATE -> "lateHaDays";
            case UNSERVED -> "unservedHa";
            case TREATED -> "treatedShare";
            case FILLS -> "fills";
            case WATER_TRIPS -> "waterTrips";
            case WAIT -> "waitH";
            case RIG_USE -> "rigUse";
            case STALE -> "staleLoads";
            case DUMPED -> "dumpedKg";
            case WORK -> "workH";
            case DRIVE -> "driveKm";
        };
    }

    private static ObjectNode chance(Chance chance) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("springs", chance.springs())
                .put("of", chance.of())
                .put("lower", chance.lower())
                .put("upper", chance.upper());
    }

    private static ObjectNode spread(Spread spread) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("low", spread.low())
                .put("median", spread.median())
                .put("high", spread.high())
                .put("mean", spread.mean());
    }

    private static ObjectNode difference(PairedDifference difference) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("mean", difference.mean())
                .put("lower", difference.lower())
                .put("upper", difference.upper())
                .put("less", difference.less())
                .put("same", difference.same())
                .put("more", difference.more());
    }

    private static ObjectNode money(Money money) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("season", spread(money.season()));
        money.difference().ifPresent(difference -> node.set("lessBase", difference(difference)));
        money.breakEven().ifPresent(breakEven -> node.putObject("breakEven")
                .put("mean", breakEven.mean())
                .put("lower", breakEven.lower())
                .put("upper", breakEven.upper()));
        return node.put("yearlyExtra", money.yearlyExtra());
    }
}
