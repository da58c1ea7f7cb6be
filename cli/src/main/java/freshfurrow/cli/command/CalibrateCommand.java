package freshfurrow.cli.command;

import freshfurrow.app.input.ChosenPart;
import freshfurrow.app.refusal.SeasonPart;
import freshfurrow.cli.card.CalibrationCard;
import freshfurrow.cli.card.CalibrationOrder;
import freshfurrow.cli.card.CardUnits;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "calibrate",
        header = "Print a calibration card for a planter's outlets.",
        description =
                "%nThe card has flows, catches, speeds and pressure. Each figure comes with its arithmetic, in US units if the season counts water in gallons, otherwise in metric units. Write quantities with a unit as in a season file; without one, the card's unit is assumed.%n",
        footer = {
            "  freshfurrow calibrate scenarios/first-season --planter P1",
            "  freshfurrow calibrate season.yaml --planter P1 \\",
            "      --pressure '40 psi' --rate '15 gal/ac'",
            "  freshfurrow calibrate season.yaml --planter P1 \\",
            "      --jar-time 30s --caught '31 fl oz, 33 fl oz, 28 fl oz'",
            "  freshfurrow calibrate season.yaml --planter P1 \\",
            "      --caught '19 fl oz' --over '136 ft'"
        })
final class CalibrateCommand implements Callable<Integer> {
    private static final Duration LONGEST_JAR = Duration.ofHours(1);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(names = "--planter", paramLabel = "ID", description = "planter of the season, needed if it has several")
    private Optional<String> planter = Optional.empty();

    @Option(names = "--recipe", paramLabel = "ID", description = "recipe of the season, needed if it has several")
    private Optional<String> recipe = Optional.empty();

    @Option(names = "--speed", paramLabel = "V", description = "speed to calibrate for (default: the planter's)")
    private Optional<String> speed = Optional.empty();

    @Option(
            names = "--jar-time",
            paramLabel = "TIME",
            converter = TimeConverter.class,
            defaultValue = "30s",
            description = "length of a jar test in whole seconds, like 30s or 1min (default: ${DEFAULT-VALUE})")
    private Duration jarTime = Duration.ofSeconds(30);

    @Option(
            names = "--pressure",
            paramLabel = "P",
            description = "pressure at the outlets now, like '40 psi' or '250 kPa'; used with --rate or --caught")
    private Optional<String> pressure = Optional.empty();

    @Option(names = "--rate", paramLabel = "R", description = "another rate, to find the pressure for it")
    private Optional<String> rate = Optional.empty();

    @Option(
            names = "--caught",
            paramLabel = "LIST",
            description =
                    "what you caught in the jar time, from one row or several with commas between, like '31 fl oz, 33 fl oz' or '900 mL'")
    private Optional<String> caught = Optional.empty();

    @Option(names = "--over", paramLabel = "LENGTH", description = "distance of the catch, if it was not timed")
    private Optional<String> over = Optional.empty();

    @Override
    public Integer call() {
        Season read = season.given().read().season();
        int planterIndex = ChosenPart.among(
                SeasonPart.PLANTER,
                planter,
                read.planters().stream().map(Planter::id).toList());
        int recipeIndex = ChosenPart.among(
                SeasonPart.RECIPE,
                recipe,
                read.recipes().stream().map(Recipe::id).toList());
        Planter chosen = read.planters().get(planterIndex);
        CardUnits units = CardUnits.ofOneSystem(read.units());
        refuseLoneOptions();
        CalibrationOrder order = new CalibrationOrder(
                planterIndex,
                recipeIndex,
                quantity("--speed", speed, Kind.SPEED, units).orElse(chosen.speedMPerS()),
                jarSeconds(),
                quantity("--pressure", pressure, Kind.PRESSURE, units),
                quantity("--rate", rate, Kind.VOLUME_PER_AREA, units),
                caught(chosen, units));
        Output.print(spec, CalibrationCard.lines(read, order));
        return Freshfurrow.OK;
    }

    private void refuseLoneOptions() {
        if (rate.isPresent() && pressure.isEmpty()) {
            throw new WrongArgument("--rate needs the pressure now; give it with --pressure, like --pressure '40 psi'");
        }
        if (pressure.isPresent() && rate.isEmpty() && caught.isEmpty()) {
            throw new WrongArgument("--pressure is used with --rate or --caught; give one of them");
        }
        if (over.isPresent() && caught.isEmpty()) {
            throw new WrongArgument("--over is the distance of a catch; give what was caught with --caught");
        }
    }

    private int jarSeconds() {
        if (jarTime.toMillisPart() != 0 || jarTime.compareTo(LONGEST_JAR) > 0) {
            throw new WrongArgument("--jar-time must be in whole seconds, at most an hour; write it like 30s");
        }
        return (int) jarTime.toSeconds();
    }

    private Optional<CalibrationOrder.Caught> caught(Planter chosen, CardUnits units) {
        if (caught.isEmpty()) {
            return Optional.empty();
        }
        List<Double> litres =
                QuantityText.list("--caught", caught.get(), Kind.CAUGHT_VOLUME, units.symbol(Kind.CAUGHT_VOLUME));
        long rows = Math.max(1, Math.round(chosen.widthM() / chosen.rowSpacingM()));
        if (litres.size() > rows) {
            throw new WrongArgument(
                    "--caught has " + litres.size() + " catches, but " + chosen.id() + " has " + rows + " rows");
        }
        return Optional.of(new CalibrationOrder.Caught(litres, quantity("--over", over, Kind.LENGTH, units)));
    }

    private static OptionalDouble quantity(String option, Optional<String> text, Kind kind, CardUnits units) {
        return text.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(QuantityText.si(option, text.get(), kind, units.symbol(kind)));
    }
}
