package freshfurrow.model.audit;

/** What a plan must satisfy. */
public enum Rule {
    SEASON("The plan is of this season, has all its planters and rigs, and tells their tanks, payloads and buckets and"
            + " the names of fields as the season does."),
    KNOWN_NAMES("Every field, place, water point, recipe, lot, planter, rig, load and batch that is named exists."),
    UNIQUE_NAMES("Every load and every batch has a name of its own, and no field is listed twice."),
    COMPLETE_RECORDS("Every load has one fill and one transfer and every batch one extraction, by the machines they"
            + " name, and every batch goes into a load."),
    FIGURES("Every figure is finite and not below zero."),
    MACHINE_WORK("Planters move, wait, fill and plant; rigs move, draw, extract, clean, transfer and dump."),

    START("A plan of what is left of a season begins where its machines stand, with what is in their tanks."),
    DONE_BEFORE(
            "What was done before a plan begins lies between the season's first day and that moment, once each; machines are"
                    + " free from then on, and promises are for the days ahead."),
    CARRIED_BATCHES(
            "Batches made before a plan begins are told once and again the same, made of their lots before their rig is"
                    + " free."),
    CARRIED_MIX(
            "Mix on board when a plan begins is of batches made before, keeps as long as the oldest of them and asks for no"
                    + " more compost than they took; in a tank it is the load that the plan names."),
    NUMBERS("Loads and batches are numbered in the plan's order, on from those made before."),

    ONE_AT_A_TIME("A machine does one thing after the other."),
    SEASON_DAYS("Nothing is done before the season's first day or after its last."),
    WORK_HOURS(
            "What a machine does lies in one working period of an open day, not before the plan begins and not while the machine"
                    + " is down; only a wait may span a break."),
    PLACE("A machine starts where the season says or where it stands, and works where its last move took it."),
    ROAD_DISTANCE("A move is as long as the road between its places."),
    ROAD_TIME("A move takes at least distance over road speed, and for a planter its move time as well."),

    FIELD_AREA("What is planted of a field and what is unserved add up to its area."),
    UNSERVED_REASON("An unserved field has an area above zero and a reason."),
    LIST_ORDER("A planter plants only fields of its list, in the list's order."),
    ALLOWED_PLANTER("A field is listed for and planted by a planter that may plant it."),
    WINDOW_OPENING("No field is planted before its window opens."),
    RAIN_CLOSURE("No field is planted while rain or wet ground keeps it closed."),
    WAIT_REASON(
            "A wait for dry ground begins while rain or wet ground closes the field that is planted next, a wait for a window"
                    + " before it opens, and after a wait for hours the fill fits the hours of both machines no earlier."),
    WAIT_BEGINNING(
            "A wait for a rig, water, compost or hours begins when the field that is planted next is open and dry."),
    WAIT_END(
            "A wait for the field that is planted next ends when that is open and dry or the planter is filled, any other when it is"
                    + " filled."),
    FIELD_CAPACITY("No planter plants faster than its effective field capacity."),

    LOAD_ON_BOARD("A planter plants from the load that it took last, and from no other."),
    RECIPE("The recipe of a load is the recipe of every field planted from it."),
    MIX_RATE("What is applied of a load is the planted area times the mix rate of its recipe."),
    LOAD_BALANCE("What is transferred of a load is what is applied and what is dumped."),
    TANK_CAPACITY("A load is above zero and at most the planter's tank and 0.1 % of it."),
    FILL_AND_TRANSFER("The fill and the transfer of a load are one event: same place, same start, same end."),
    TRANSFER_TIME("A transfer takes the planter's fill setup and the litres over the rig's transfer rate."),
    DEADLINE(
            "The deadline of a load is the end of its oldest batch plus the hold time of its recipe, in seconds that pass, also"
                    + " where clocks are changed."),
    FRESHNESS("Nothing of a load is planted after its deadline."),
    LAST_DROP(
            "The last drop of a load is the end of the last planting from it, or where the plan begins when nothing is planted from it."),
    MIX_BATCHES("A load names all batches of the mix that it is from, in the order in which they were made."),
    BATCH_BEFORE_LOAD("The batches of a load are made by its rig and have ended when its transfer starts."),

    BATCH_COMPOST("A batch takes compost, and at most the rig's batch compost and a gram."),
    BATCH_WATER("A batch takes its share of the drum's water, at most the drum."),
    BATCH_TIME("A batch takes at least its share of the rig's batch time."),
    BATCH_RECORD("A batch starts and ends as its rig extracts it."),
    BATCH_PLACE("Batches are made where the rig extracts: beside the planter they are for, or at a water point."),
    CLEANING("After a batch the rig is cleaned before the next one, for at least its clean time."),

    COMPOST_RATE("The compost of batches is what the mix made from them asks for by its recipe."),
    LOT_SUM("What a batch takes from lots adds up to its compost."),
    LOT_DATE("No lot is used before it is there."),
    LOT_STOCK("No lot gives more than it has."),
    LOT_ORDER("A lot that came first is used up, to a gram, before the next is begun."),

    WATER_ON_BOARD("A rig passes on and dumps no more than it has, and 0.1 % of what it did since its last draw."),
    NURSE_TANK("A rig never has more on board than its nurse tank holds."),
    DRAW_PLACE("Water is drawn at water points."),
    DRAW_TIME("A draw takes at least the treatment time and the litres over the point's flow."),
    DRAW_HOURS("Water is drawn while the water point is open."),
    HOSES("No more rigs draw at once than the water point has hoses."),
    DAILY_LIMIT("The draws that start on one date stay within the water point's daily limit."),

    TOTALS("Every total is what the activities, loads and batches come to."),
    SCORE("The score breaks no rule and is what late and unserved areas, refills, waits and drives come to."),
    REFILL_BOUND("The lower bound on planter fills is not above the fills of a plan that leaves nothing out."),
    BOUND("No total and no score is better than the bound beside it, and the bounds on planter fills agree."),
    PROVED_BEST("A plan that is proved best has the score that the best plan is said to have."),
    LIMITS("What is said to hold a season back names each resource once, and takes away only what there is.");

    private final String sentence;

    Rule(String sentence) {
        this.sentence = sentence;
    }

    /** The rule in one sentence. */
    public String sentence() {
        return sentence;
    }
}
