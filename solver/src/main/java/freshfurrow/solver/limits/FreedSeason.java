package freshfurrow.solver.limits;

import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Distances;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * A season in which one resource is no limit any more. Working hours, closed days, tanks and hold times stay as they are.
 *
 * <ul>
 *   <li>planter: planting, moves, flushes and setting up for a fill take next to no time;
 *   <li>rig: batches, cleans, set-ups, close-ups, pumping, loading compost and drives take next to no time, drawing water takes its time;
 *   <li>hose: there is a hose for every rig, and water comes at once, without hooking up or treatment;
 *   <li>waterLimit: no water point has a daily limit;
 *   <li>compost: there is more than enough from the season's first day on;
 *   <li>weather: it never rains, and no ground is too wet;
 *   <li>windows: fields may be planted from the season's first day on; their last days stay, as what comes after is late.
 * </ul>
 */
public final class FreedSeason {
    /** So many metres, or litres, a second that whatever is done at that rate takes the second that all things take at least. */
    private static final double AT_ONCE = 1e6;

    private static final double MORE_THAN_ENOUGH_KG = 1e9;

    private FreedSeason() {}

    /**
     * The season with that resource made free.
     *
     * @param roads distances to take instead of the season's own, the same but sooner had
     */
    public static Season of(Season season, Resource free, Distances roads) {
        return season.change()
                .fields(fields(season, free))
                .applicators(each(season.applicators(), free == Resource.PLANTER, FreedSeason::instant))
                .rigs(each(season.rigs(), free == Resource.RIG, FreedSeason::instant))
                .waterPoints(each(
                        season.waterPoints(),
                        free == Resource.HOSE || free == Resource.WATER_LIMIT,
                        point -> free == Resource.HOSE
                                ? instant(point, season.rigs().size())
                                : withoutLimit(point)))
                .compost(free == Resource.COMPOST ? List.of(enough(season)) : season.compost())
                .rain(free == Resource.WEATHER ? List.of() : season.rain())
                .ground(free == Resource.WEATHER ? Optional.empty() : season.ground())
                .distances(roads)
                .season();
    }

    /** Where compost is fetched it lies with the first lot, or with the first rig where all lots are on board. */
    private static CompostLot enough(Season season) {
        CompostLot enough = new CompostLot("enough", MORE_THAN_ENOUGH_KG, season.first());
        return season.saysWhereCompostLies()
                ? enough.withAt(season.compost().stream()
                        .flatMap(lot -> lot.at().stream())
                        .findFirst()
                        .or(() -> Optional.of(season.rigs().get(0).at())))
                : enough;
    }

    private static List<Field> fields(Season season, Resource free) {
        return switch (free) {
            case WINDOWS -> each(season.fields(), true, field -> openFrom(season.first(), field));
            case WEATHER ->
                each(season.fields(), true, field -> field.change()
                        .judged(List.of())
                        .field());
            default -> season.fields();
        };
    }

    private static Field openFrom(LocalDate first, Field field) {
        DateWindow window = field.window();
        return window.first().isAfter(first)
                ? field.change().window(new DateWindow(first, window.last())).field()
                : field;
    }

    private static Applicator instant(Applicator planter) {
        return planter.withoutDelay(AT_ONCE);
    }

    private static Rig instant(Rig rig) {
        return rig.change()
                .batchTimeS(1)
                .cleanTimeS(0)
                .setUpS(0)
                .closeUpS(0)
                .transferLPerS(AT_ONCE)
                .roadSpeedMPerS(AT_ONCE)
                .compostLoadingMinPerKg(1 / AT_ONCE)
                .rig();
    }

    private static WaterPoint instant(WaterPoint point, int rigs) {
        return point.change()
                .flowLPerS(AT_ONCE)
                .hoses(Math.max(point.hoses(), rigs))
                .treatmentS(0)
                .hookUpS(0)
                .waterPoint();
    }

    private static WaterPoint withoutLimit(WaterPoint point) {
        return point.change().dailyLimitL(OptionalDouble.empty()).waterPoint();
    }

    private static <T> List<T> each(List<T> things, boolean freed, UnaryOperator<T> change) {
        return freed ? things.stream().map(change).toList() : things;
    }
}
