package freshfurrow.model.plan;

import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.ClockFace;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.DistanceUnit;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.quantity.VolumeUnit;
import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Standing;
import freshfurrow.model.season.Work;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;

/** Plans without sense but with every kind of part in them, out of a seed. Figures have the decimals a file keeps. */
final class RandomPlans {
    private static final String[] IDS = {"N40", "S 80", "ø\"q\\", "P1", "L0001", "B0002", "", " spaces ", "日本"};

    private final Random random;

    private RandomPlans(long seed) {
        random = new Random(seed);
    }

    static Plan plan(long seed) {
        return new RandomPlans(seed).plan();
    }

    private Plan plan() {
        return new Plan(
                new Plan.SeasonSource(
                        id(),
                        "season " + id() + ".yaml",
                        id(),
                        units(),
                        map(this::id),
                        list(() -> new ClockChanges.Change(time(), time())),
                        list(this::id)),
                new Plan.Score(random.nextLong(), random.nextLong(), random.nextLong()),
                new Plan.Totals(
                        area(),
                        area(),
                        area(),
                        area(),
                        count(),
                        count(),
                        count(),
                        count(),
                        figure(),
                        figure(),
                        figure(),
                        figure(),
                        figure(),
                        figure(),
                        figure(),
                        time(),
                        random.nextBoolean() ? Optional.of(bill()) : Optional.empty()),
                map(() -> new Plan.PlanterPlan(
                        oneOf(Work.values()),
                        random.nextBoolean() ? Optional.empty() : Optional.of(id()),
                        figure(),
                        list(this::id),
                        list(this::id),
                        list(this::activity))),
                map(() -> new Plan.RigPlan(perhaps(), perhaps(), perhaps(), list(this::activity))),
                list(() -> new Plan.Load(
                        id(),
                        id(),
                        id(),
                        id(),
                        figure(),
                        list(this::id),
                        figure(),
                        figure(),
                        time(),
                        time(),
                        random.nextBoolean())),
                list(() -> new Plan.Batch(id(), id(), time(), time(), figure(), figure(), map(this::figure))),
                list(() -> new Plan.Unserved(id(), area(), id())),
                random.nextBoolean() ? Optional.of(bounds()) : Optional.empty(),
                list(this::limit),
                random.nextBoolean() ? Optional.of(start()) : Optional.empty(),
                random.nextBoolean() ? Optional.of(chances()) : Optional.empty());
    }

    private Bill bill() {
        return new Bill(
                random.nextBoolean() ? Optional.of(id()) : Optional.empty(),
                list(() -> new Bill.Line(oneOf(CostItem.values()), area(), area(), random.nextInt(1_000_000) / 1e2)));
    }

    private Chances chances() {
        return new Chances(1 + random.nextInt(1_000), map(this::chance), map(this::chance));
    }

    private double chance() {
        return random.nextInt(1_001) / 1_000.0;
    }

    private PlanStart start() {
        Standing standing = new Standing(
                time(),
                map(() -> new Standing.OfPlanter(
                        id(),
                        time(),
                        random.nextBoolean() ? Optional.of(time().toLocalDate()) : Optional.empty(),
                        random.nextBoolean() ? Optional.of(new Standing.Tank(id(), id(), mix())) : Optional.empty(),
                        random.nextBoolean() ? Optional.of(new Standing.Lines(id(), time())) : Optional.empty())),
                map(() -> new Standing.OfRig(
                        id(),
                        time(),
                        Math.abs(figure()),
                        random.nextBoolean() ? Optional.of(mix()) : Optional.empty(),
                        random.nextBoolean(),
                        map(() -> 1 + Math.abs(figure())),
                        random.nextBoolean() ? Optional.of(time()) : Optional.empty())),
                map(() -> Math.abs(figure())),
                map(() -> new Standing.Promise(id(), time().toLocalDate())),
                random.nextInt(1_000),
                random.nextInt(1_000));
        return new PlanStart(
                standing,
                list(() -> new PlanStart.Planted(id(), time().toLocalDate(), areaAboveZero())),
                list(() -> new CompostLot(id(), 1 + Math.abs(figure()), time().toLocalDate())),
                list(this::rain),
                list(this::outage),
                map(this::judgements),
                list(() -> new Plan.Batch(id(), id(), time(), time(), figure(), figure(), map(this::figure))),
                random.nextBoolean()
                        ? FromLog.NOTHING
                        : new FromLog(list(this::rain), list(this::outage), map(this::figure)),
                random.nextBoolean() ? Optional.of(id()) : Optional.empty());
    }

    private Rain rain() {
        return new Rain(time().toLocalDate(), time().toLocalTime().toSecondOfDay(), Math.abs(figure()));
    }

    private Outage outage() {
        LocalDateTime from = time();
        return new Outage(id(), from, from.plusMinutes(1 + random.nextInt(5_000)));
    }

    private List<Judgement> judgements() {
        LocalDateTime said = time();
        return List.of(Judgement.fit(said), new Judgement(said, said.plusMinutes(random.nextInt(5_000))));
    }

    private Mix mix() {
        return new Mix(id(), areaAboveZero(), time(), list(this::id));
    }

    private Plan.Bounds bounds() {
        return new Plan.Bounds(
                random.nextInt(1_000),
                random.nextInt(1_000),
                area(),
                area(),
                -random.nextInt(1_000_000),
                random.nextInt(3) * 33_333L,
                random.nextBoolean());
    }

    private Plan.Limit limit() {
        return new Plan.Limit(
                oneOf(Resource.values()),
                area(),
                area(),
                figure(),
                random.nextInt(1_001) / 1e3,
                random.nextInt(1_001) / 1e3);
    }

    private OptionalDouble perhaps() {
        return random.nextBoolean() ? OptionalDouble.of(figure()) : OptionalDouble.empty();
    }

    private Activity activity() {
        try {
            return oneOf(ActivityKind.values()).from(new ActivityKind.Source() {
                @Override
                public LocalDateTime start() {
                    return time();
                }

                @Override
                public LocalDateTime end() {
                    return time();
                }

                @Override
                public String name(ActivityParts.Name part) {
                    return id();
                }

                @Override
                public double amount(ActivityParts.Amount part) {
                    return part == ActivityParts.Amount.AREA_HA ? area() : figure();
                }

                @Override
                public WaitReason why() {
                    return oneOf(WaitReason.values());
                }
            });
        } catch (PlanFileException e) {
            throw new IllegalStateException(e);
        }
    }

    private DisplayUnits units() {
        return new DisplayUnits(
                oneOf(AreaUnit.values()),
                oneOf(VolumeUnit.values()),
                oneOf(MassUnit.values()),
                oneOf(DistanceUnit.values()),
                oneOf(ClockFace.values()));
    }

    private String id() {
        return oneOf(IDS);
    }

    private LocalDateTime time() {
        return LocalDateTime.of(2027, 1, 1, 0, 0).plusSeconds(random.nextInt(365 * 86_400));
    }

    private int count() {
        return random.nextInt(10_000_001);
    }

    /** In whole millionths, as the file has it. */
    private double areaAboveZero() {
        return (1 + random.nextInt(2_000_000_000)) / 1e6;
    }

    private double area() {
        return random.nextInt(2_000_000_000) / 1e6;
    }

    private double figure() {
        return random.nextInt(2_000_000_000) / 1e3;
    }

    private <T> List<T> list(Supplier<T> element) {
        List<T> all = new ArrayList<>();
        for (int left = random.nextInt(4); left > 0; left--) {
            all.add(element.get());
        }
        return all;
    }

    private <T> Map<String, T> map(Supplier<T> value) {
        Map<String, T> all = new LinkedHashMap<>();
        for (int left = random.nextInt(4); left > 0; left--) {
            all.put(id(), value.get());
        }
        return all;
    }

    private <T> T oneOf(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
