package freshfurrow.model.learn;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A farm with round figures, and its log, entry by entry. Rig R1: batches of 20 kg in 1,000 s, 2 L/s, 10 m/s. Planter P1: 10 m x 2 m/s x 0.5 =
 * 10 m2/s, so 1 ha in 1,000 s; 5 m/s. All ways are 6 km. Drying: 0.1 d/mm; rain below 2 mm does not count.
 */
final class LearnFarm {
    static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    static final Season SEASON = season();

    private final List<Entry> entries = new ArrayList<>();

    /** @param day from 0 */
    static LocalDateTime at(int day, int hour, int minute) {
        return FIRST.plusDays(day).atTime(hour, minute);
    }

    LearnFarm add(LocalDateTime at, Fact fact) {
        return add(at, fact, Optional.empty());
    }

    LearnFarm add(LocalDateTime at, Fact fact, long tookS) {
        return add(at, fact, Optional.of(Duration.ofSeconds(tookS)));
    }

    private LearnFarm add(LocalDateTime at, Fact fact, Optional<Duration> took) {
        entries.add(new Entry(entries.size() + 1, at, fact, took, ""));
        return this;
    }

    Lessons lessons() {
        return lessons(SEASON);
    }

    Lessons lessons(Season season) {
        return Learning.of(season, new SeasonLog(entries));
    }

    Lesson lesson(Taught figure, String of) {
        return lesson(lessons(), figure, of);
    }

    static Lesson lesson(Lessons lessons, Taught figure, String of) {
        return lessons.lessons().stream()
                .filter(one -> one.figure() == figure && one.of().equals(of))
                .findFirst()
                .orElseThrow();
    }

    static Fact batch(double kg, String... loads) {
        return new Fact.BatchMade("R1", Map.of("pile", kg), List.of(loads), Optional.empty());
    }

    static Fact planted(double ha, String load) {
        return new Fact.Planted("A", ha, Optional.of("P1"), Optional.of(load));
    }

    static Fact withoutExtract(double ha) {
        return new Fact.Planted("A", ha, Optional.of("P1"), Optional.empty(), true);
    }

    static Fact fit(String field) {
        return new Fact.GroundJudged(field, true, Optional.empty());
    }

    static Fact unfit(String field) {
        return new Fact.GroundJudged(field, false, Optional.empty());
    }

    private static Season season() {
        WorkHours day = new WorkHours(List.of(new DaySpan(6 * 3600, 20 * 3600)));
        return new Season(
                "Learning",
                FIRST,
                FIRST.plusDays(60),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(), Set.of()),
                Map.of("yard", Optional.empty()),
                List.of(WithDefaults.recipe("standard", 200, 10, 5 * 3600)),
                List.of(field("A"), field("B")),
                List.of(WithDefaults.planter("P1", 10, 0.75, 2, 0.5, 1500, 5, 300, 600, "yard", day)),
                List.of(WithDefaults.rig(
                        "R1",
                        150,
                        20,
                        1000,
                        180,
                        2500,
                        2,
                        10,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        ExtractAt.FIELD,
                        "yard",
                        day)),
                List.of(),
                List.of(new CompostLot("pile", 10_000, FIRST.minusDays(20))),
                new Drying(2, 0.1, 0.1, 0.1),
                List.of(),
                Optional.empty(),
                (from, to) -> from.equals(to) ? 0 : 6_000,
                Goals.DEFAULT,
                DisplayUnits.METRIC,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static Field field(String id) {
        return WithDefaults.field(
                id,
                id,
                40,
                Optional.empty(),
                List.of(),
                "corn",
                new DateWindow(FIRST, FIRST.plusDays(40)),
                "standard",
                Drainage.WELL,
                1,
                Set.of());
    }
}
