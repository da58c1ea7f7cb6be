package freshfurrow.cli.command;

import freshfurrow.app.input.ChosenPart;
import freshfurrow.app.refusal.SeasonPart;
import freshfurrow.app.season.LoadRoom;
import freshfurrow.cli.card.CardUnits;
import freshfurrow.cli.card.MixingCard;
import freshfurrow.cli.card.MixingOrder;
import freshfurrow.model.mixing.LabCount;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "mix",
        header = "Print a mixing card for one load.",
        description =
                "%nThe card has compost, batches, water, times and the use-by time, each figure with its arithmetic. The load is for an area or a volume of mix; otherwise it is the largest that the planter's tank and the hold time allow. Write quantities with a unit as in a season file; without one, the season's unit is assumed.%n",
        footer = {
            "  freshfurrow mix scenarios/first-season",
            "  freshfurrow mix scenarios/first-season --acres 28 --start 07:00",
            "  freshfurrow mix scenarios/metric --area '9 ha'",
            "  freshfurrow mix season.yaml --tank '450 gal' --rig R1 --recipe strong",
            "  freshfurrow mix season.yaml --tank '1500 L' --rig R1 --recipe strong",
            "  freshfurrow mix season.yaml --count 3.6e8 --extraction-share 0.8"
        })
final class MixCommand implements Callable<Integer> {
    private static final double SMALLEST_HA = 0.01;
    private static final double LARGEST_HA = 100_000;
    private static final String COUNT_REMEDY = "write them like --count 3.6e8 --extraction-share 0.8";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(names = "--area", paramLabel = "A", description = "area of the load, like '42 ac' or '17 ha'")
    private Optional<String> area = Optional.empty();

    @Option(names = "--acres", paramLabel = "A", description = "the same; a number without a unit means acres")
    private Optional<String> acres = Optional.empty();

    @Option(names = "--tank", paramLabel = "V", description = "volume of mix, like '450 gal' or '1700 L'")
    private Optional<String> tank = Optional.empty();

    @Option(names = "--recipe", paramLabel = "ID", description = "recipe of the season, needed if it has several")
    private Optional<String> recipe = Optional.empty();

    @Option(names = "--rig", paramLabel = "ID", description = "rig of the season, needed if it has several")
    private Optional<String> rig = Optional.empty();

    @Option(names = "--planter", paramLabel = "ID", description = "planter of the season, needed if it has several")
    private Optional<String> planter = Optional.empty();

    @Option(
            names = "--start",
            paramLabel = "TIME",
            converter = ClockConverter.class,
            description = "when the first batch starts, like 07:00")
    private Optional<LocalTime> start = Optional.empty();

    @Option(
            names = "--bucket",
            paramLabel = "MASS",
            description = "compost in a full bucket, weighed (default: the bucket of the rig, if the season gives it)")
    private Optional<String> bucket = Optional.empty();

    @Option(
            names = "--count",
            paramLabel = "N",
            description = "organisms per gram of compost, as a laboratory counted them, like 3.6e8")
    private Optional<String> count = Optional.empty();

    @Option(
            names = "--extraction-share",
            paramLabel = "SHARE",
            description =
                    "share of them that extraction brings into the water, more than 0, up to 1; needed with --count")
    private Optional<String> extractionShare = Optional.empty();

    @Override
    public Integer call() {
        Season read = season.given().read().season();
        int planterIndex = ChosenPart.among(
                SeasonPart.PLANTER,
                planter,
                read.applicators().stream().map(Applicator::id).toList());
        int rigIndex = ChosenPart.among(
                SeasonPart.RIG, rig, read.rigs().stream().map(Rig::id).toList());
        int recipeIndex = ChosenPart.among(
                SeasonPart.RECIPE,
                recipe,
                read.recipes().stream().map(Recipe::id).toList());
        CardUnits units = new CardUnits(read.units());
        LoadRoom room = new LoadRoom(read, planterIndex, rigIndex, recipeIndex);
        Wanted wanted = wanted(room, read.applicators().get(planterIndex).id(), units);
        MixingOrder order = new MixingOrder(
                planterIndex,
                rigIndex,
                recipeIndex,
                wanted.areaHa,
                wanted.from,
                bucketKg(read.rigs().get(rigIndex), units),
                start,
                labCount());
        List<String> whyNot = MixingCard.whyNot(read, order, room);
        if (!whyNot.isEmpty()) {
            throw new WrongArgument(whyNot);
        }
        Output.print(spec, MixingCard.lines(read, order, room));
        return Freshfurrow.OK;
    }

    private record Wanted(double areaHa, String from) {}

    private Wanted wanted(LoadRoom room, String planterId, CardUnits units) {
        if (Stream.of(area, acres, tank).filter(Optional::isPresent).count() > 1) {
            throw new WrongArgument("--area, --acres and --tank cannot be used together; give one of them");
        }
        if (tank.isPresent()) {
            double litres = QuantityText.si("--tank", tank.get(), Kind.VOLUME, units.symbol(Kind.VOLUME));
            return inRange(
                    "--tank",
                    tank.get(),
                    new Wanted(room.areaHaOf(litres), "what " + tank.get() + " of mix is enough for"));
        }
        if (area.isPresent()) {
            return inRange(
                    "--area",
                    area.get(),
                    new Wanted(
                            QuantityText.si("--area", area.get(), Kind.AREA, units.symbol(Kind.AREA)), "as asked for"));
        }
        if (acres.isPresent()) {
            return inRange(
                    "--acres",
                    acres.get(),
                    new Wanted(QuantityText.si("--acres", acres.get(), Kind.AREA, "ac"), "as asked for"));
        }
        double largest = room.largestHa();
        if (largest == 0) {
            throw new WrongArgument("The hold time ends before " + planterId
                    + " is filled; give an area with --area, or a longer hold time");
        }
        return new Wanted(largest, "the largest load for " + planterId + ", by tanks and hold time");
    }

    private static Wanted inRange(String option, String text, Wanted wanted) {
        if (wanted.areaHa < SMALLEST_HA || wanted.areaHa > LARGEST_HA) {
            throw new WrongArgument(
                    option + " '" + text + "' is out of range; a load is for 0.01 ha (0.025 ac) to 100,000 ha");
        }
        return wanted;
    }

    private OptionalDouble bucketKg(Rig rig, CardUnits units) {
        return bucket.map(text ->
                        OptionalDouble.of(QuantityText.si("--bucket", text, Kind.MASS, units.symbol(Kind.MASS))))
                .orElse(rig.bucketKg());
    }

    private Optional<LabCount> labCount() {
        if (count.isEmpty() && extractionShare.isEmpty()) {
            return Optional.empty();
        }
        if (count.isEmpty() || extractionShare.isEmpty()) {
            throw new WrongArgument("--count and --extraction-share must be used together; " + COUNT_REMEDY);
        }
        double organisms = QuantityText.number("--count", count.get(), COUNT_REMEDY);
        double share = QuantityText.number("--extraction-share", extractionShare.get(), COUNT_REMEDY);
        try {
            return Optional.of(new LabCount(organisms, share));
        } catch (IllegalArgumentException e) {
            throw new WrongArgument(e.getMessage() + "; " + COUNT_REMEDY);
        }
    }
}
