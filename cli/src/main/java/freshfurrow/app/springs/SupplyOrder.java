package freshfurrow.app.springs;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.model.supply.SureShare;

/**
 * What a season uses, to be found out.
 *
 * @param sure in which share of springs it is to be enough
 * @param steps moves to try for the plan, 0 or more
 * @param seed of plan and springs
 * @param threads to work on, 1 or more
 */
public record SupplyOrder(
        GivenSeason season, SpringRange springs, SureShare sure, long steps, long seed, int threads) {}
