package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import freshfurrow.model.timeline.WetGround;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Audit and timeline know by code of their own when ground is closed, whatever people said of it. */
class WetPeriodsTest {
    @Property(tries = 500)
    void groundIsClosedWhenTheTimelineSaysSo(@ForAll long seed) {
        Random random = new Random(seed);
        Season season = withWeather(RandomSeasons.season(seed), random);
        FieldGround ground = new FieldGround(
                List.of(Drainage.values()).get(random.nextInt(3)),
                several(
                        4,
                        random,
                        () -> RandomSeasons.judgement(
                                season, season.start().plusMinutes(random.nextInt(season.days() * 24 * 60)), random)));

        List<WetGround> closed = WetGround.of(season, ground);
        List<WorkCalendar.Period> periods = new WetPeriods(season).of(ground);

        // at, just before and just after each moment at which anything changes
        Stream.concat(
                        closed.stream().flatMap(wet -> Stream.of(wet.from(), wet.to())),
                        periods.stream()
                                .flatMap(wet -> Stream.of(wet.start(), wet.end()))
                                .map(season.time()::at))
                .flatMap(time -> Stream.of(time.minusSeconds(1), time, time.plusSeconds(1)))
                .filter(time -> !time.isBefore(season.start()) && time.isBefore(season.end()))
                .forEach(time -> assertThat(isIn(periods, season.time().seconds(time)))
                        .as("%s, %s", time, ground)
                        .isEqualTo(closed.stream()
                                .anyMatch(wet -> !time.isBefore(wet.from()) && time.isBefore(wet.to()))));
    }

    private static boolean isIn(List<WorkCalendar.Period> periods, long at) {
        return periods.stream().anyMatch(wet -> wet.start() <= at && at < wet.end());
    }

    private static Season withWeather(Season season, Random random) {
        List<WetDay> wet = IntStream.range(0, season.days())
                .filter(day -> random.nextInt(3) == 0)
                .mapToObj(day -> new WetDay(season.first().plusDays(day), random.nextInt(40_000), 40, 30, 5))
                .toList();
        Map<LocalDate, Double> rainMm = new LinkedHashMap<>();
        IntStream.range(0, season.days())
                .filter(day -> random.nextInt(3) == 0)
                .forEach(day -> rainMm.put(season.first().plusDays(day), 5 * random.nextDouble()));
        return season.change()
                .rain(several(
                        5,
                        random,
                        () -> new Rain(
                                season.first().plusDays(random.nextInt(season.days()) - 2L),
                                random.nextInt(86_400),
                                random.nextInt(50))))
                .ground(
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(new GroundRecord(
                                        "invented",
                                        rainMm,
                                        Map.of(Drainage.WELL, wet, Drainage.MODERATE, wet, Drainage.POOR, wet))))
                .season();
    }

    private static <T> List<T> several(int most, Random random, Supplier<T> one) {
        List<T> all = new ArrayList<>();
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            all.add(one.get());
        }
        return all;
    }
}
