package freshfurrow.model.learn;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** How soon ground bore machines after rain, by drainage class, as bounds from what people said of it. */
final class DryGround {
    private final Season season;
    private final LeftOutCounts leftOut;
    private final List<Rain> rains = new ArrayList<>();
    private final Map<String, List<Entry>> saidOf = new HashMap<>();
    private final Map<Drainage, List<Observation>> seen = new EnumMap<>(Drainage.class);

    /** @param standing entries that count, by time */
    DryGround(Season season, List<Entry> standing, LeftOutCounts leftOut) {
        this.season = season;
        this.leftOut = leftOut;
        rains.addAll(season.rain());
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.RainMeasured rain) {
                rains.add(new Rain(
                        entry.at().toLocalDate(), entry.at().toLocalTime().toSecondOfDay(), rain.mm()));
            } else if (entry.fact() instanceof Fact.GroundJudged judged) {
                saidOf.computeIfAbsent(judged.field(), field -> new ArrayList<>())
                        .add(entry);
            } else if (entry.fact() instanceof Fact.Planted planted) {
                saidOf.computeIfAbsent(planted.field(), field -> new ArrayList<>())
                        .add(entry);
            }
        }
        rains.removeIf(rain -> rain.mm() < season.drying().ignoreBelowMm() || !(rain.mm() > 0));
        rains.sort(Comparator.comparing(Rain::start));
    }

    /** For each drainage class that a field has. */
    List<Lesson> lessons() {
        for (Field field : season.fields()) {
            seen.computeIfAbsent(field.drainage(), none -> new ArrayList<>());
            byRain(saidOf.getOrDefault(field.id(), List.of()))
                    .forEach((rain, said) -> look(field.drainage(), rain, said));
        }
        return seen.entrySet().stream()
                .map(one -> lesson(one.getKey(), one.getValue()))
                .toList();
    }

    /** What was said of a field, by the last rain before it. */
    private Map<Integer, List<Entry>> byRain(List<Entry> said) {
        Map<Integer, List<Entry>> byRain = new TreeMap<>();
        int rain = -1;
        for (Entry entry : said) {
            while (rain + 1 < rains.size() && !rains.get(rain + 1).start().isAfter(entry.at())) {
                rain++;
            }
            byRain.computeIfAbsent(rain, none -> new ArrayList<>()).add(entry);
        }
        return byRain;
    }

    private void look(Drainage drainage, int rain, List<Entry> said) {
        int judgements = (int) said.stream().filter(DryGround::isJudgement).count();
        if (judgements == 0) {
            return;
        }
        if (rain < 0) {
            leftOut.count(LeftOut.NO_RAIN, judgements);
            return;
        }
        Optional<LocalDateTime> unfit =
                said.stream().filter(entry -> !isFit(entry)).map(Entry::at).reduce((before, after) -> after);
        Optional<LocalDateTime> fit =
                said.stream().filter(DryGround::isFit).map(Entry::at).findFirst();
        if (unfit.isPresent() && fit.isPresent() && !fit.get().isAfter(unfit.get())) {
            leftOut.count(LeftOut.UNFIT_AFTER_FIT, judgements);
            return;
        }
        seen.get(drainage).add(bounds(rain, unfit, fit));
    }

    private static boolean isJudgement(Entry entry) {
        return entry.fact() instanceof Fact.GroundJudged;
    }

    /** A field that was planted was fit. */
    private static boolean isFit(Entry entry) {
        return !(entry.fact() instanceof Fact.GroundJudged judged) || judged.fit();
    }

    private Observation bounds(int rain, Optional<LocalDateTime> unfit, Optional<LocalDateTime> fit) {
        DryingBounds bounds = new DryingBounds(rains.subList(0, rain + 1));
        return new Observation(
                rain,
                unfit.map(bounds::notBelow).orElse(0.0),
                fit.map(at -> bounds.notAbove(at, unfit)).orElse(Double.POSITIVE_INFINITY));
    }

    private Lesson lesson(Drainage drainage, List<Observation> observations) {
        return new Lesson(
                Taught.DRYING,
                drainage.name().toLowerCase(Locale.ROOT),
                season.drying().daysPerMm(drainage),
                observations.size(),
                GroupMedian.groups(observations),
                GroupMedian.of(observations)
                        .filter(median -> Double.isFinite(median.medianHigh()))
                        .map(DryGround::estimate));
    }

    private static Estimate estimate(GroupMedian median) {
        double middle = median.medianLow() > 0 ? (median.medianLow() + median.medianHigh()) / 2 : median.medianHigh();
        return new Estimate(middle, middle, median.low(), median.high(), OptionalDouble.empty());
    }
}
