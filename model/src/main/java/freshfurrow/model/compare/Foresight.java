package freshfurrow.model.compare;

/**
 * What people who knew a spring's weather beforehand might come to, against what was lived: means over some springs. Nobody can know it,
 * so this is a bound on what better rules and forecasts could bring, as far as the search finds it.
 *
 * @param springs number of springs, 1 or more
 * @param lateHaDays late area-days with foresight, unweighted
 * @param unservedHa area not planted with foresight, ha
 * @param livedLateHaDays late area-days as lived in the same springs
 * @param livedUnservedHa area not planted as lived, ha
 */
public record Foresight(
        int springs, double lateHaDays, double unservedHa, double livedLateHaDays, double livedUnservedHa) {}
