package freshfurrow.model.plan;

import static freshfurrow.model.plan.JsonForm.AREA;
import static freshfurrow.model.plan.JsonForm.COUNT;
import static freshfurrow.model.plan.JsonForm.FIGURE;
import static freshfurrow.model.plan.JsonForm.FIGURES;
import static freshfurrow.model.plan.JsonForm.TEXT;
import static freshfurrow.model.plan.JsonForm.TEXTS;
import static freshfurrow.model.plan.JsonForm.TIME;
import static freshfurrow.model.plan.JsonForm.WHOLE;
import static freshfurrow.model.plan.JsonForm.YES_NO;
import static freshfurrow.model.plan.JsonKey.key;
import static freshfurrow.model.plan.JsonKey.perhaps;

import freshfurrow.model.season.CostItem;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The records of a plan that stand in its file as they are. */
final class PlanRecords {
    static final JsonRecord<Plan.Score> SCORE = score();
    private static final JsonRecord<Bill.Line> BILL_LINE = billLine();
    private static final JsonRecord<Bill> BILL = bill();
    static final JsonRecord<Plan.Totals> TOTALS = totals();
    static final JsonRecord<Plan.Load> LOAD = load();
    static final JsonRecord<Plan.Batch> BATCH = batch();
    static final JsonRecord<Plan.Unserved> UNSERVED = unserved();
    static final JsonRecord<Plan.Bounds> BOUNDS = bounds();
    static final JsonRecord<Plan.Limit> LIMIT = limit();
    static final JsonRecord<Chances> CHANCES = chances();

    private PlanRecords() {}

    private static JsonRecord<Plan.Score> score() {
        JsonKey<Plan.Score, Long> hard = key("hard", Plan.Score::hard, WHOLE);
        JsonKey<Plan.Score, Long> medium = key("medium", Plan.Score::medium, WHOLE);
        JsonKey<Plan.Score, Long> soft = key("soft", Plan.Score::soft, WHOLE);
        return new JsonRecord<>(in -> new Plan.Score(in.get(hard), in.get(medium), in.get(soft)), hard, medium, soft);
    }

    private static JsonRecord<Plan.Totals> totals() {
        JsonKey<Plan.Totals, Double> areaHa = key("areaHa", Plan.Totals::areaHa, AREA);
        JsonKey<Plan.Totals, Double> untreatedHa =
                new JsonKey<>("untreatedHa", Plan.Totals::untreatedHa, AREA, Optional.of(0.0));
        JsonKey<Plan.Totals, Double> unservedHa = key("unservedHa", Plan.Totals::unservedHa, AREA);
        JsonKey<Plan.Totals, Double> lateHaDays = key("lateHaDays", Plan.Totals::lateHaDays, AREA);
        JsonKey<Plan.Totals, Integer> planterFills = key("planterFills", Plan.Totals::planterFills, COUNT);
        JsonKey<Plan.Totals, Integer> waterTrips = key("waterTrips", Plan.Totals::waterTrips, COUNT);
        JsonKey<Plan.Totals, Integer> compostTrips =
                new JsonKey<>("compostTrips", Plan.Totals::compostTrips, COUNT, Optional.of(0));
        // a weaker bound than the one among the bounds, in files of before
        JsonKey<Plan.Totals, Optional<Integer>> bound = perhaps("refillLowerBound", any -> Optional.empty(), COUNT);
        JsonKey<Plan.Totals, Integer> batches = key("batches", Plan.Totals::batches, COUNT);
        JsonKey<Plan.Totals, Double> compostKg = key("compostKg", Plan.Totals::compostKg, FIGURE);
        JsonKey<Plan.Totals, Double> dumpedL = key("dumpedL", Plan.Totals::dumpedL, FIGURE);
        JsonKey<Plan.Totals, Double> waitMin = key("waitMin", Plan.Totals::waitMin, FIGURE);
        JsonKey<Plan.Totals, Double> idleMin = new JsonKey<>("idleMin", Plan.Totals::idleMin, FIGURE, Optional.of(0.0));
        JsonKey<Plan.Totals, Double> overtimeMin =
                new JsonKey<>("overtimeMin", Plan.Totals::overtimeMin, FIGURE, Optional.of(0.0));
        JsonKey<Plan.Totals, Double> driveKm = key("driveKm", Plan.Totals::driveKm, FIGURE);
        JsonKey<Plan.Totals, Double> marginMin = key("smallestMarginMin", Plan.Totals::smallestMarginMin, FIGURE);
        JsonKey<Plan.Totals, LocalDateTime> finish = key("finish", Plan.Totals::finish, TIME);
        JsonKey<Plan.Totals, Optional<Bill>> bill = perhaps(
                "bill", Plan.Totals::bill, new JsonForm<>(BILL::tree, (place, key) -> BILL.read(place.at(key))));
        return new JsonRecord<>(
                in -> {
                    in.get(bound);
                    return new Plan.Totals(
                            in.get(areaHa),
                            in.get(untreatedHa),
                            in.get(unservedHa),
                            in.get(lateHaDays),
                            in.get(planterFills),
                            in.get(waterTrips),
                            in.get(compostTrips),
                            in.get(batches),
                            in.get(compostKg),
                            in.get(dumpedL),
                            in.get(waitMin),
                            in.get(idleMin),
                            in.get(overtimeMin),
                            in.get(driveKm),
                            in.get(marginMin),
                            in.get(finish),
                            in.get(bill));
                },
                areaHa,
                untreatedHa,
                unservedHa,
                lateHaDays,
                planterFills,
                waterTrips,
                compostTrips,
                bound,
                batches,
                compostKg,
                dumpedL,
                waitMin,
                idleMin,
                overtimeMin,
                driveKm,
                marginMin,
                finish,
                bill);
    }

    private static JsonRecord<Bill.Line> billLine() {
        JsonKey<Bill.Line, CostItem> item =
                key("item", Bill.Line::item, JsonForm.oneOf(CostItem.values(), CostItem::key));
        JsonKey<Bill.Line, Double> amount = key("amount", Bill.Line::amount, AREA);
        JsonKey<Bill.Line, Double> price = key("price", Bill.Line::price, AREA);
        JsonKey<Bill.Line, Double> cost = key("cost", Bill.Line::cost, FIGURE);
        return new JsonRecord<>(
                in -> new Bill.Line(in.get(item), in.get(amount), in.get(price), in.get(cost)),
                item,
                amount,
                price,
                cost);
    }

    private static JsonRecord<Bill> bill() {
        JsonKey<Bill, Optional<String>> currency = perhaps("currency", Bill::currency, TEXT);
        JsonKey<Bill, List<Bill.Line>> lines = key("lines", Bill::lines, JsonForm.listOf(BILL_LINE));
        JsonKey<Bill, Double> sum = key("sum", Bill::sum, FIGURE);
        return new JsonRecord<>(
                in -> {
                    Bill bill = new Bill(in.get(currency), in.get(lines));
                    if (in.get(sum) != bill.sum()) {
                        throw new IllegalArgumentException(
                                "sum is " + in.get(sum) + ", its lines add up to " + bill.sum());
                    }
                    return bill;
                },
                currency,
                lines,
                sum);
    }

    private static JsonRecord<Plan.Load> load() {
        JsonKey<Plan.Load, String> id = key("id", Plan.Load::id, TEXT);
        JsonKey<Plan.Load, String> planter = key("planter", Plan.Load::planter, TEXT);
        JsonKey<Plan.Load, String> rig = key("rig", Plan.Load::rig, TEXT);
        JsonKey<Plan.Load, String> recipe = key("recipe", Plan.Load::recipe, TEXT);
        JsonKey<Plan.Load, Double> litres = key("litres", Plan.Load::litres, FIGURE);
        JsonKey<Plan.Load, List<String>> batches = key("batches", Plan.Load::batches, TEXTS);
        JsonKey<Plan.Load, Double> appliedL = key("appliedL", Plan.Load::appliedL, FIGURE);
        JsonKey<Plan.Load, Double> dumpedL = key("dumpedL", Plan.Load::dumpedL, FIGURE);
        JsonKey<Plan.Load, LocalDateTime> deadline = key("deadline", Plan.Load::deadline, TIME);
        JsonKey<Plan.Load, LocalDateTime> lastDrop = key("lastDrop", Plan.Load::lastDrop, TIME);
        JsonKey<Plan.Load, Optional<Boolean>> intoReserve =
                perhaps("intoReserve", load -> load.intoReserve() ? Optional.of(true) : Optional.empty(), YES_NO);
        return new JsonRecord<>(
                in -> new Plan.Load(
                        in.get(id),
                        in.get(planter),
                        in.get(rig),
                        in.get(recipe),
                        in.get(litres),
                        in.get(batches),
                        in.get(appliedL),
                        in.get(dumpedL),
                        in.get(deadline),
                        in.get(lastDrop),
                        in.get(intoReserve).orElse(false)),
                id,
                planter,
                rig,
                recipe,
                litres,
                batches,
                appliedL,
                dumpedL,
                deadline,
                lastDrop,
                intoReserve);
    }

    private static JsonRecord<Plan.Batch> batch() {
        JsonKey<Plan.Batch, String> id = key("id", Plan.Batch::id, TEXT);
        JsonKey<Plan.Batch, String> rig = key("rig", Plan.Batch::rig, TEXT);
        JsonKey<Plan.Batch, LocalDateTime> start = key("start", Plan.Batch::start, TIME);
        JsonKey<Plan.Batch, LocalDateTime> end = key("end", Plan.Batch::end, TIME);
        JsonKey<Plan.Batch, Double> compostKg = key("compostKg", Plan.Batch::compostKg, FIGURE);
        JsonKey<Plan.Batch, Double> waterL = key("waterL", Plan.Batch::waterL, FIGURE);
        JsonKey<Plan.Batch, Map<String, Double>> lots = key("lots", Plan.Batch::lots, FIGURES);
        return new JsonRecord<>(
                in -> new Plan.Batch(
                        in.get(id),
                        in.get(rig),
                        in.get(start),
                        in.get(end),
                        in.get(compostKg),
                        in.get(waterL),
                        in.get(lots)),
                id,
                rig,
                start,
                end,
                compostKg,
                waterL,
                lots);
    }

    private static JsonRecord<Plan.Unserved> unserved() {
        JsonKey<Plan.Unserved, String> field = key("field", Plan.Unserved::field, TEXT);
        JsonKey<Plan.Unserved, Double> areaHa = key("areaHa", Plan.Unserved::areaHa, AREA);
        JsonKey<Plan.Unserved, String> why = key("why", Plan.Unserved::why, TEXT);
        return new JsonRecord<>(
                in -> new Plan.Unserved(in.get(field), in.get(areaHa), in.get(why)), field, areaHa, why);
    }

    private static JsonRecord<Plan.Bounds> bounds() {
        JsonKey<Plan.Bounds, Integer> planterFills = key("planterFills", Plan.Bounds::planterFills, COUNT);
        JsonKey<Plan.Bounds, Integer> waterTrips = key("waterTrips", Plan.Bounds::waterTrips, COUNT);
        JsonKey<Plan.Bounds, Double> unservedHa = key("unservedHa", Plan.Bounds::unservedHa, AREA);
        JsonKey<Plan.Bounds, Double> lateHaDays = key("lateHaDays", Plan.Bounds::lateHaDays, AREA);
        JsonKey<Plan.Bounds, Long> medium = key("medium", Plan.Bounds::medium, WHOLE);
        JsonKey<Plan.Bounds, Long> effortMin =
                new JsonKey<>("effortMin", Plan.Bounds::effortMin, WHOLE, Optional.of(0L));
        JsonKey<Plan.Bounds, Boolean> provedBest = key("provedBest", Plan.Bounds::provedBest, YES_NO);
        return new JsonRecord<>(
                in -> new Plan.Bounds(
                        in.get(planterFills),
                        in.get(waterTrips),
                        in.get(unservedHa),
                        in.get(lateHaDays),
                        in.get(medium),
                        in.get(effortMin),
                        in.get(provedBest)),
                planterFills,
                waterTrips,
                unservedHa,
                lateHaDays,
                medium,
                effortMin,
                provedBest);
    }

    private static JsonRecord<Chances> chances() {
        JsonKey<Chances, Integer> seasons = key("seasons", Chances::seasons, COUNT);
        JsonKey<Chances, Map<String, Double>> stale = key("stale", Chances::stale, FIGURES);
        JsonKey<Chances, Map<String, Double>> inWindow = key("inWindow", Chances::inWindow, FIGURES);
        return new JsonRecord<>(
                in -> new Chances(in.get(seasons), in.get(stale), in.get(inWindow)), seasons, stale, inWindow);
    }

    private static JsonRecord<Plan.Limit> limit() {
        JsonKey<Plan.Limit, Resource> resource =
                key("resource", Plan.Limit::resource, JsonForm.oneOf(Resource.values(), Resource::key));
        JsonKey<Plan.Limit, Double> unservedHa = key("unservedHa", Plan.Limit::unservedHa, AREA);
        JsonKey<Plan.Limit, Double> lateHaDays = key("lateHaDays", Plan.Limit::lateHaDays, AREA);
        JsonKey<Plan.Limit, Double> waitMin = key("waitMin", Plan.Limit::waitMin, FIGURE);
        JsonKey<Plan.Limit, Double> shareOfLate = key("shareOfLate", Plan.Limit::shareOfLate, FIGURE);
        JsonKey<Plan.Limit, Double> shareOfWait = key("shareOfWait", Plan.Limit::shareOfWait, FIGURE);
        return new JsonRecord<>(
                in -> new Plan.Limit(
                        in.get(resource),
                        in.get(unservedHa),
                        in.get(lateHaDays),
                        in.get(waitMin),
                        in.get(shareOfLate),
                        in.get(shareOfWait)),
                resource,
                unservedHa,
                lateHaDays,
                waitMin,
                shareOfLate,
                shareOfWait);
    }
}
