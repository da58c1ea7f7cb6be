package freshfurrow.model.read;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.HOUR_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.season.TimeSpread.Breakdowns;
import java.util.Optional;

/** How much times vary by a season file; what is left out varies as much as is usual. */
final class SpreadReader {
    private static final Range SPREAD = new Range(0, 1, "a coefficient of variation from 0 to 1", "0.15");
    private static final Range BETWEEN = Range.between(HOUR_S, 10_000.0 * HOUR_S, "1 to 10,000 h");
    private static final Range DOWN = Range.between(MINUTE_S, 10.0 * DAY_S, "1 min to 10 d");
    private static final String NONE = "none";

    private SpreadReader() {}

    /** The spreads, where there are any. */
    static Optional<TimeSpread> read(Keys season) {
        return season.keys("spread").map(own -> {
            TimeSpread usual = TimeSpread.USUAL;
            TimeSpread spread = new TimeSpread(
                    own.number("batchTime", SPREAD).orElse(usual.batch()),
                    own.number("transfer", SPREAD).orElse(usual.transfer()),
                    own.number("drive", SPREAD).orElse(usual.drive()),
                    own.number("planting", SPREAD).orElse(usual.planting()),
                    breakdowns(own));
            own.refuseOthers();
            return spread;
        });
    }

    private static Optional<Breakdowns> breakdowns(Keys spread) {
        Optional<Node> node = spread.node("breakdowns");
        if (node.isPresent() && node.get() instanceof Node.Text text) {
            if (!text.text().equals(NONE)) {
                spread.problem(
                        "breakdowns",
                        "'" + text.text() + "' is neither times nor none",
                        "write breakdowns: {between: 80 h, down: 90 min}, or none");
            }
            return Optional.empty();
        }
        Optional<Keys> own = spread.keys("breakdowns");
        Breakdowns usual = Breakdowns.USUAL;
        Breakdowns breakdowns = new Breakdowns(
                own.flatMap(keys -> keys.optionalQuantity("between", Kind.TIME, BETWEEN))
                        .orElse(usual.betweenS()),
                own.flatMap(keys -> keys.optionalQuantity("down", Kind.TIME, DOWN))
                        .orElse(usual.downS()));
        own.ifPresent(Keys::refuseOthers);
        return Optional.of(breakdowns);
    }
}
