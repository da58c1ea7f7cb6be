package freshfurrow.model.plan;

import static freshfurrow.model.plan.ActivityParts.Amount.AREA_HA;
import static freshfurrow.model.plan.ActivityParts.Amount.KM;
import static freshfurrow.model.plan.ActivityParts.Amount.LITRES;
import static freshfurrow.model.plan.ActivityParts.Name.AT;
import static freshfurrow.model.plan.ActivityParts.Name.BATCH;
import static freshfurrow.model.plan.ActivityParts.Name.FIELD;
import static freshfurrow.model.plan.ActivityParts.Name.FROM;
import static freshfurrow.model.plan.ActivityParts.Name.LOAD;
import static freshfurrow.model.plan.ActivityParts.Name.TO;
import static freshfurrow.model.plan.ActivityParts.Name.WATER_POINT;
import static freshfurrow.model.plan.ActivityParts.Why.WHY;

import freshfurrow.model.plan.ActivityParts.Amount;
import freshfurrow.model.plan.ActivityParts.Name;
import freshfurrow.model.plan.ActivityParts.Part;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;

/** The kinds of activities: what they are called, who does them, and how they are read from a plan file. */
public enum ActivityKind {
    MOVE(
            "drive",
            By.EITHER,
            in -> new Activity.Move(in.start(), in.end(), in.name(FROM), in.name(TO), in.amount(KM)),
            FROM,
            TO,
            KM),
    WAIT("wait", By.PLANTER, in -> new Activity.Wait(in.start(), in.end(), in.name(AT), in.why()), AT, WHY),
    FILL("fill", By.PLANTER, in -> new Activity.Fill(in.start(), in.end(), in.name(AT), in.name(LOAD)), AT, LOAD),
    PLANT(
            "planting",
            By.PLANTER,
            in -> new Activity.Plant(in.start(), in.end(), in.name(FIELD), in.name(LOAD), in.amount(AREA_HA)),
            FIELD,
            LOAD,
            AREA_HA),
    DRAW(
            "draw",
            By.RIG,
            in -> new Activity.Draw(in.start(), in.end(), in.name(WATER_POINT), in.amount(LITRES)),
            WATER_POINT,
            LITRES),
    EXTRACT("batch", By.RIG, in -> new Activity.Extract(in.start(), in.end(), in.name(AT), in.name(BATCH)), AT, BATCH),
    CLEAN("cleaning", By.RIG, in -> new Activity.Clean(in.start(), in.end(), in.name(AT)), AT),
    TRANSFER(
            "transfer",
            By.RIG,
            in -> new Activity.Transfer(in.start(), in.end(), in.name(AT), in.name(LOAD), in.amount(LITRES)),
            AT,
            LOAD,
            LITRES),
    DUMP("dump", By.RIG, in -> new Activity.Dump(in.start(), in.end(), in.name(AT), in.amount(LITRES)), AT, LITRES);

    private enum By {
        PLANTER,
        RIG,
        EITHER
    }

    /** Where the parts of an activity are taken from. */
    interface Source {
        LocalDateTime start() throws PlanFileException;

        LocalDateTime end() throws PlanFileException;

        String name(Name part) throws PlanFileException;

        double amount(Amount part) throws PlanFileException;

        WaitReason why() throws PlanFileException;
    }

    @FunctionalInterface
    private interface Maker {
        Activity made(Source in) throws PlanFileException;
    }

    private final String noun;
    private final By by;
    private final Maker maker;
    private final List<Part> parts;

    ActivityKind(String noun, By by, Maker maker, Part... parts) {
        this.noun = noun;
        this.by = by;
        this.maker = maker;
        this.parts = List.of(parts);
    }

    /** Its name in a plan file. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What people call one. */
    public String noun() {
        return noun;
    }

    public boolean byPlanters() {
        return by != By.RIG;
    }

    public boolean byRigs() {
        return by != By.PLANTER;
    }

    /** What an activity of this kind has besides its times, in the order of a plan file. */
    public List<Part> parts() {
        return parts;
    }

    /** @throws PlanFileException when the source does */
    Activity from(Source source) throws PlanFileException {
        return maker.made(source);
    }
}
