package freshfurrow.model.read;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Goals;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a season's plans are judged by; what is left out is as usual. */
final class GoalsReader {
    private static final Range WEIGHT = Range.from0(1_000, "a number from 0 to 1,000");
    private static final Range STEADY_DAYS = Range.from0(60, "a number of days from 0 to 60");
    private static final Range WORTH = Range.from0(7 * DAY_S, "0 to 7 d");
    private static final Range UNTREATED = Range.from0(366.0 * DAY_S, "0 to 366 d");
    private static final Range LEAST_PIECE = Range.from0(40, "0 to 100 ac (40 ha)");
    private static final Range WORTH_PER_MASS = Range.from0(100_000, "0 to 45,000 min/lb (100,000 min/kg)");
    private static final Range WORTH_PER_AREA = Range.from0(100_000, "0 to 40,000 min/ac (100,000 min/ha)");

    private final Optional<Keys> keys;
    private boolean byMoney;

    /** @param season the whole season file */
    GoalsReader(Keys season) {
        keys = season.keys("goals");
    }

    Goals read() {
        if (keys.isEmpty()) {
            return Goals.DEFAULT;
        }
        Goals usual = Goals.DEFAULT;
        Keys own = keys.get();
        byMoney = isByMoney(own);
        Goals goals = new Goals(
                own.optionalQuantity("refill", Kind.TIME, WORTH)
                        .map(s -> s / MINUTE_S)
                        .orElse(usual.refillMin()),
                own.optionalQuantity("waterTrip", Kind.TIME, WORTH)
                        .map(s -> s / MINUTE_S)
                        .orElse(usual.waterTripMin()),
                own.optionalQuantity("compostTrip", Kind.TIME, WORTH)
                        .map(s -> s / MINUTE_S)
                        .orElse(usual.compostTripMin()),
                own.number("wait", WEIGHT).orElse(usual.waitMinPerMin()),
                own.number("drive", WEIGHT).orElse(usual.driveMinPerMin()),
                own.optionalQuantity("dump", Kind.TIME_PER_MASS, WORTH_PER_MASS).orElse(usual.dumpMinPerKg()),
                own.optionalQuantity("early", Kind.TIME_PER_AREA, WORTH_PER_AREA)
                        .orElse(usual.earlyMinPerHaDay()),
                own.optionalQuantity("movedField", Kind.TIME, WORTH)
                        .map(s -> s / MINUTE_S)
                        .orElse(usual.movedMin()),
                own.optionalQuantity("scrap", Kind.TIME, WORTH)
                        .map(s -> s / MINUTE_S)
                        .orElse(usual.scrapMin()),
                own.optionalQuantity("leastPiece", Kind.AREA, LEAST_PIECE).orElse(usual.leastPieceHa()),
                own.optionalQuantity("callOut", Kind.TIME, WORTH)
                        .map(s -> s / MINUTE_S)
                        .orElse(usual.callOutMin()),
                own.number("overtime", WEIGHT).orElse(usual.overtimeMinPerMin()),
                own.number("idle", WEIGHT).orElse(usual.idleMinPerMin()),
                own.number("steadyDays", STEADY_DAYS).map(Double::intValue).orElse(usual.steadyDays()),
                own.optionalQuantity("untreated", Kind.TIME, UNTREATED)
                        .map(s -> OptionalDouble.of(s / DAY_S))
                        .orElse(usual.untreatedDays()));
        own.refuseOthers();
        return goals;
    }

    private static boolean isByMoney(Keys own) {
        Optional<String> by = own.text("by");
        if (by.isEmpty()) {
            return false;
        }
        boolean money = by.get().toLowerCase(Locale.ROOT).equals("money");
        if (!money) {
            own.problem(
                    "by",
                    "'" + by.get() + "' is not what plans can be judged by",
                    "write by: money, or leave the key out to judge by lateness first and effort next");
        }
        return money;
    }

    /** The goals with the prices that they are judged by, if they are. */
    Goals judgedBy(Goals goals, Optional<Costs> costs) {
        if (!byMoney) {
            return goals;
        }
        if (costs.isEmpty() || !costs.get().hasPrice()) {
            keys.ifPresent(own -> own.problem(
                    "by",
                    "plans are to be judged by money, and nothing has a price",
                    "write prices under costs, like costs: {labour: 24 /h, late: 4 /ac/d}"));
        }
        return goals.withByMoney(costs);
    }
}
