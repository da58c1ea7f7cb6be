package freshfurrow.app.input;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFileException;
import freshfurrow.model.plan.PlanOfSeason;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The season that a plan was made from.
 *
 * @param season a season file or a folder that holds season.yaml; without it, the file that the plan names, in its folder or the one above
 * @param variants that the plan was made with, in the same order
 */
public record SeasonOfPlan(Optional<Path> season, List<Path> variants) {
    public SeasonOfPlan {
        variants = List.copyOf(variants);
    }

    /**
     * What was left of the season when the plan was made.
     *
     * @param planFile where the plan was read from
     * @throws Refused when there is no such season, it cannot be used, or it is not the one that the plan was made from
     */
    public Season read(Path planFile, Plan plan) {
        return checked(planFile, plan, readWhole(planFile, plan));
    }

    /**
     * The whole season.
     *
     * @throws Refused when there is no such season, it cannot be used, or it is not the one that the plan was made from
     */
    public Season readWhole(Path planFile, Plan plan) {
        Path file = season.orElseGet(() -> find(planFile, plan.season().file()));
        Reading.Valid read = new GivenSeason(file, variants).read();
        if (!PlanOrigin.isOf(read, plan)) {
            throw new Refused(new InputRefusal.SeasonOfAnotherPlan(file, planFile));
        }
        return read.season();
    }

    /**
     * What was left of the season when the plan was made, of which the plan names nothing that is not there.
     *
     * @throws Refused when the plan is not of that season
     */
    public static Season checked(Path planFile, Plan plan, Season whole) {
        Season left = whatItWasMadeFor(planFile, plan, whole);
        try {
            PlanOfSeason.check(planFile, plan, whole, left);
        } catch (PlanFileException e) {
            throw GivenPlan.unreadable(e);
        }
        return left;
    }

    /**
     * What was left of the season when the plan was made.
     *
     * @throws Refused when the plan begins otherwise than that season can stand
     */
    public static Season whatItWasMadeFor(Path planFile, Plan plan, Season whole) {
        return plan.start().map(start -> leftFrom(planFile, start, whole)).orElse(whole);
    }

    /**
     * What is left of a season from where a plan begins.
     *
     * @throws Refused when that season cannot stand so
     */
    public static Season leftFrom(Path planFile, PlanStart start, Season whole) {
        try {
            return start.remaining(whole);
        } catch (IllegalArgumentException e) {
            throw new Refused(new InputRefusal.ImpossibleStart(planFile, String.valueOf(e.getMessage())));
        }
    }

    /** A plan may come from anyone, so that what it names may not lead elsewhere, through a link neither. */
    private static boolean isInItsFolder(Path file) {
        try {
            Path folder = file.getParent();
            return Files.isRegularFile(file)
                    && folder != null
                    && file.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    private static Path find(Path planFile, String name) {
        Path folder = planFile.toAbsolutePath().normalize().getParent();
        List<Path> places = Stream.iterate(folder, Objects::nonNull, Path::getParent)
                .limit(2)
                .map(place -> place.resolve(name))
                .toList();
        return places.stream()
                .filter(SeasonOfPlan::isInItsFolder)
                .findFirst()
                .orElseThrow(() -> new Refused(new InputRefusal.SeasonNotFound(planFile, places)));
    }
}
