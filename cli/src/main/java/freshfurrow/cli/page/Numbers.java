package freshfurrow.cli.page;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in the page's data. */
final class Numbers {
    private Numbers() {}

    /** To six decimals, as short as it can be written: as fine as the plan's own figures. */
    static BigDecimal rounded(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
