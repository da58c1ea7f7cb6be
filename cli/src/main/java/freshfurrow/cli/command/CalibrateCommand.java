package freshfurrow.cli.command;

import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.app.input.ChosenPart;
import freshfurrow.app.refusal.SeasonPart;
import freshfurrow.cli.card.CalibrationCard;
import freshfurrow.cli.card.CalibrationOrder;
import freshfurrow.cli.card.CardUnits;
import freshfurrow.cli.card.HoseCard;
import freshfurrow.cli.card.HoseOrder;
import freshfurrow.cli.card.Outlets;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Swath;
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
        header = "Print a calibration card for a planter, a boom or a hose.",
        description =
                "%nThe card has flows, catches, speeds and pressure; for a hose, what to catch and how long an area takes. Each figure comes with its arithmetic, in US units if the season counts water in gallons, otherwise in metric units. Write quantities with a unit as in a season file; without one, the card's unit is assumed.%n",
        footer = {
            "  freshfurrow calibrate scenarios/first-season --planter P1",
            "  freshfurrow calibrate season.yaml --planter P1 \\",
            "      --pressure '40 psi' --rate '15 gal/ac'",
            "  freshfurrow calibrate scenarios/metric \\",
            "      --pressure '2.8 bar' --rate '140 L/ha'",
            "  freshfurrow calibrate season.yaml --planter P1 \\",
            "      --jar-time 30s --caught '31 fl oz, 33 fl oz, 28 fl oz'",
            "  freshfurrow calibrate season.yaml --planter P1 \\",
            "      --caught '19 fl oz' --over '136 ft'",
            "  freshfurrow calibrate season.yaml --planter P1 \\",
            "      --caught '560 mL' --over '40 m'",
            "  freshfurrow calibrate season.yaml --sprayer S1 \\",
            "      --nozzle-spacing '20 in'",
            "  freshfurrow calibrate season.yaml --sprayer S1 \\",
            "      --nozzle-spacing '50 cm'",
            "  freshfurrow calibrate season.yaml --sprayer H1 \\",
            "      --caught '2.4 gal' --sprayed '0.05 ac' --sprayed-in 90s",
            "  freshfurrow calibrate season.yaml --sprayer H1 \\",
            "      --caught '9 L' --sprayed '200 m2' --sprayed-in 90s"
        })
final class CalibrateCommand implements Callable<Integer> {
    private static final Duration LONGEST_JAR = Duration.ofHours(1);
    private static final Duration USUAL_JAR = Duration.ofSeconds(30);
    private static final Duration USUAL_HOSE_CATCH = Duration.ofMinutes(1);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(names = "--planter", paramLabel = "ID", description = "planter of the season, needed if it has several")
    private Optional<String> planter = Optional.empty();

    @Option(names = "--sprayer", paramLabel = "ID", description = "sprayer of the season instead of a planter")
    private Optional<String> sprayer = Optional.empty();

    @Option(
            names = "--nozzle-spacing",
            paramLabel = "LENGTH",
            description = "distance between the nozzles of a boom, needed for one, like '20 in' or '50 cm'")
    private Optional<String> nozzleSpacing = Optional.empty();

    @Option(names = "--recipe", paramLabel = "ID", description = "recipe of the season, needed if it has several")
    private Optional<String> recipe = Optional.empty();

    @Option(names = "--speed", paramLabel = "V", description = "speed to calibrate for (default: the machine's)")
    private Optional<String> speed = Optional.empty();

    @Option(
            names = "--jar-time",
            paramLabel = "TIME",
            converter = TimeConverter.class,
            description = "length of a jar test in whole seconds, like 30s or 1min (default: 30s, for a hose 1min)")
    private Optional<Duration> jarTime = Optional.empty();

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
                    "what you caught in the jar time, from one outlet or several with commas between, like '31 fl oz, 33 fl oz' or '900 mL'")
    private Optional<String> caught = Optional.empty();

    @Option(names = "--over", paramLabel = "LENGTH", description = "distance of the catch, if it was not timed")
    private Optional<String> over = Optional.empty();

    @Option(names = "--sprayed", paramLabel = "AREA", description = "area that was sprayed by a hose against the clock")
    private Optional<String> sprayed = Optional.empty();

    @Option(
            names = "--sprayed-in",
            paramLabel = "TIME",
            converter = TimeConverter.class,
            description = "how long that area took, like 90s")
    private Optional<Duration> sprayedIn = Optional.empty();

    @Override
    public Integer call() {
        Season read = season.given().read().season();
        if (planter.isPresent() && sprayer.isPresent()) {
            throw new WrongArgument("--planter and --sprayer: a card is for one machine; give one of them");
        }
        boolean sprays =
                sprayer.isPresent() || (planter.isEmpty() && read.planters().isEmpty());
        Output.print(spec, sprays ? ofSprayer(read) : ofPlanter(read));
        return Freshfurrow.OK;
    }

    private List<String> ofPlanter(Season read) {
        int planterIndex = ChosenPart.among(
                SeasonPart.PLANTER,
                planter,
                read.planters().stream().map(Planter::id).toList());
        refuse(nozzleSpacing.isPresent(), "--nozzle-spacing", "a boom");
        refuseHoseOptions();
        Planter chosen = read.planters().get(planterIndex);
        return ofOutlets(read, Outlets.of(chosen), chosen.id(), chosen.speedMPerS());
    }

    private List<String> ofSprayer(Season read) {
        int index = ChosenPart.among(
                SeasonPart.SPRAYER,
                sprayer,
                read.sprayers().stream().map(Sprayer::id).toList());
        Sprayer chosen = read.sprayers().get(index);
        if (chosen.swath() instanceof Swath.Hose hose) {
            return ofHose(read, chosen, hose);
        }
        refuseHoseOptions();
        Swath.Boom boom = (Swath.Boom) chosen.swath();
        CardUnits units = CardUnits.ofOneSystem(read.units());
        OptionalDouble spacingM = quantity("--nozzle-spacing", nozzleSpacing, Kind.LENGTH, units);
        if (spacingM.isEmpty()) {
            throw new WrongArgument(
                    "--nozzle-spacing is missing: the season does not know it; give it like --nozzle-spacing '20 in' or --nozzle-spacing '50 cm'");
        }
        if (spacingM.getAsDouble() > boom.widthM()) {
            throw new WrongArgument("--nozzle-spacing is more than the width of " + chosen.id()
                    + "; give the distance from" + " one nozzle to the next");
        }
        return ofOutlets(read, Outlets.of(chosen, boom, spacingM.getAsDouble()), chosen.id(), boom.speedMPerS());
    }

    private List<String> ofOutlets(Season read, Outlets outlets, String id, double usualMPerS) {
        CardUnits units = CardUnits.ofOneSystem(read.units());
        int recipeIndex = recipe(read);
        refuseLoneOptions();
        return CalibrationCard.lines(
                read,
                new CalibrationOrder(
                        outlets,
                        recipeIndex,
                        quantity("--speed", speed, Kind.SPEED, units).orElse(usualMPerS),
                        jarSeconds(USUAL_JAR),
                        quantity("--pressure", pressure, Kind.PRESSURE, units),
                        quantity("--rate", rate, Kind.VOLUME_PER_AREA, units),
                        caught(outlets, id, units)));
    }

    private List<String> ofHose(Season read, Sprayer chosen, Swath.Hose hose) {
        CardUnits units = CardUnits.ofOneSystem(read.units());
        String ofOutlets = "a planter or a boom";
        refuse(nozzleSpacing.isPresent(), "--nozzle-spacing", ofOutlets);
        refuse(speed.isPresent(), "--speed", ofOutlets);
        refuse(pressure.isPresent(), "--pressure", ofOutlets);
        refuse(rate.isPresent(), "--rate", ofOutlets);
        refuse(over.isPresent(), "--over", ofOutlets);
        if (sprayed.isPresent() != sprayedIn.isPresent()) {
            throw new WrongArgument("--sprayed and --sprayed-in belong together; give the area and how long it took");
        }
        return HoseCard.lines(
                read,
                new HoseOrder(
                        chosen.id(),
                        recipe(read),
                        hose.rateM2PerS(),
                        jarSeconds(USUAL_HOSE_CATCH),
                        quantity("--caught", caught, Kind.CAUGHT_VOLUME, units),
                        timed(units)));
    }

    private Optional<HoseOrder.Timed> timed(CardUnits units) {
        if (sprayed.isEmpty()) {
            return Optional.empty();
        }
        double seconds = sprayedIn.orElseThrow().toMillis() / 1000.0;
        if (!(seconds > 0)) {
            throw new WrongArgument("--sprayed-in must be above 0; write it like 90s");
        }
        double hectares = quantity("--sprayed", sprayed, Kind.AREA, units).orElseThrow();
        return Optional.of(new HoseOrder.Timed(hectares * M2_PER_HA, seconds));
    }

    private int recipe(Season read) {
        return ChosenPart.among(
                SeasonPart.RECIPE,
                recipe,
                read.recipes().stream().map(Recipe::id).toList());
    }

    private void refuseHoseOptions() {
        refuse(sprayed.isPresent(), "--sprayed", "a hose");
        refuse(sprayedIn.isPresent(), "--sprayed-in", "a hose");
    }

    private static void refuse(boolean given, String option, String machine) {
        if (given) {
            throw new WrongArgument(option + " is for " + machine + "; leave it out");
        }
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

    private int jarSeconds(Duration usual) {
        Duration jarTime = this.jarTime.orElse(usual);
        if (jarTime.toMillisPart() != 0 || jarTime.compareTo(LONGEST_JAR) > 0) {
            throw new WrongArgument("--jar-time must be in whole seconds, at most an hour; write it like 30s");
        }
        return (int) jarTime.toSeconds();
    }

    private Optional<CalibrationOrder.Caught> caught(Outlets outlets, String id, CardUnits units) {
        if (caught.isEmpty()) {
            return Optional.empty();
        }
        List<Double> litres =
                QuantityText.list("--caught", caught.get(), Kind.CAUGHT_VOLUME, units.symbol(Kind.CAUGHT_VOLUME));
        long rows = Math.max(1, Math.round(outlets.count()));
        if (litres.size() > rows) {
            throw new WrongArgument("--caught has " + litres.size() + " catches, but " + id + " has " + rows + " "
                    + outlets.one() + "s");
        }
        return Optional.of(new CalibrationOrder.Caught(litres, quantity("--over", over, Kind.LENGTH, units)));
    }

    private static OptionalDouble quantity(String option, Optional<String> text, Kind kind, CardUnits units) {
        return text.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(QuantityText.si(option, text.get(), kind, units.symbol(kind)));
    }
}
