package freshfurrow.model.plan;

import static freshfurrow.model.plan.ActivityParts.Amount.AREA_HA;
import static freshfurrow.model.plan.ActivityParts.Amount.KG;
import static freshfurrow.model.plan.ActivityParts.Amount.KM;
import static freshfurrow.model.plan.ActivityParts.Amount.LITRES;
import static freshfurrow.model.plan.ActivityParts.Name.AT;
import static freshfurrow.model.plan.ActivityParts.Name.BATCH;
import static freshfurrow.model.plan.ActivityParts.Name.FIELD;
import static freshfurrow.model.plan.ActivityParts.Name.FROM;
import static freshfurrow.model.plan.ActivityParts.Name.LOAD;
import static freshfurrow.model.plan.ActivityParts.Name.LOT;
import static freshfurrow.model.plan.ActivityParts.Name.TO;
import static freshfurrow.model.plan.ActivityParts.Name.WATER_POINT;
import static freshfurrow.model.plan.ActivityParts.Why.WHY;

import freshfurrow.model.plan.ActivityParts.Amount;
import freshfurrow.model.plan.ActivityParts.Name;
import freshfurrow.model.plan.ActivityParts.Part;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The kinds of activities: what they are called, who does them, and how they are read from a plan file. */
public enum ActivityKind {
    MOVE("drive", By.EITHER),
    WAIT("wait", By.PLANTER),
    FILL("fill", By.PLANTER),
    PLANT("planting", By.PLANTER),
    PLANT_WITHOUT("planting without extract", By.PLANTER),
    FLUSH("flush", By.PLANTER),
    DRAW("draw", By.RIG),
    LOAD_COMPOST("compost loading", By.RIG),
    EXTRACT("batch", By.RIG),
    CLEAN("cleaning", By.RIG),
    TRANSFER("transfer", By.RIG),
    DUMP("dump", By.RIG),
    SET_UP("set-up", By.RIG),
    CLOSE_UP("close-up", By.RIG);

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

    private static final Pattern NEXT_WORD = Pattern.compile("_([a-z])");

    private final String noun;
    private final By by;

    ActivityKind(String noun, By by) {
        this.noun = noun;
        this.by = by;
    }

    /** Its name in a plan file. */
    public String key() {
        return NEXT_WORD.matcher(name().toLowerCase(Locale.ROOT)).replaceAll(word -> word.group(1)
                .toUpperCase(Locale.ROOT));
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
        return switch (this) {
            case MOVE -> List.of(FROM, TO, KM);
            case WAIT -> List.of(AT, WHY);
            case FILL -> List.of(AT, LOAD);
            case PLANT -> List.of(FIELD, LOAD, AREA_HA);
            case PLANT_WITHOUT -> List.of(FIELD, AREA_HA);
            case DRAW -> List.of(WATER_POINT, LITRES);
            case LOAD_COMPOST -> List.of(AT, LOT, KG);
            case EXTRACT -> List.of(AT, BATCH);
            case CLEAN -> List.of(AT);
            case TRANSFER -> List.of(AT, LOAD, LITRES);
            case DUMP -> List.of(AT, LITRES);
            case FLUSH, SET_UP, CLOSE_UP -> List.of(AT);
        };
    }

    /** @throws PlanFileException when the source does */
    Activity from(Source in) throws PlanFileException {
        LocalDateTime start = in.start();
        LocalDateTime end = in.end();
        return switch (this) {
            case MOVE -> new Activity.Move(start, end, in.name(FROM), in.name(TO), in.amount(KM));
            case WAIT -> new Activity.Wait(start, end, in.name(AT), in.why());
            case FILL -> new Activity.Fill(start, end, in.name(AT), in.name(LOAD));
            case PLANT -> new Activity.Plant(start, end, in.name(FIELD), in.name(LOAD), in.amount(AREA_HA));
            case PLANT_WITHOUT -> new Activity.PlantWithout(start, end, in.name(FIELD), in.amount(AREA_HA));
            case DRAW -> new Activity.Draw(start, end, in.name(WATER_POINT), in.amount(LITRES));
            case LOAD_COMPOST -> new Activity.LoadCompost(start, end, in.name(AT), in.name(LOT), in.amount(KG));
            case EXTRACT -> new Activity.Extract(start, end, in.name(AT), in.name(BATCH));
            case CLEAN -> new Activity.Clean(start, end, in.name(AT));
            case TRANSFER -> new Activity.Transfer(start, end, in.name(AT), in.name(LOAD), in.amount(LITRES));
            case DUMP -> new Activity.Dump(start, end, in.name(AT), in.amount(LITRES));
            case FLUSH -> new Activity.Flush(start, end, in.name(AT));
            case SET_UP -> new Activity.SetUp(start, end, in.name(AT));
            case CLOSE_UP -> new Activity.CloseUp(start, end, in.name(AT));
        };
    }
}
