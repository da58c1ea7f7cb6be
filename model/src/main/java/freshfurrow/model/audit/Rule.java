package freshfurrow.model.audit;

/** What a plan must satisfy. */
public enum Rule {
    SEASON(
            "The plan is of this season, has all its planters and rigs, and gives the same tanks, payloads, buckets, field names and fixed fields."
                    + " A bucket is compared only where the season gives one."),
    KNOWN_NAMES("Every field, place, water point, recipe, lot, planter, rig, load and batch that is named exists."),
    UNIQUE_NAMES("Every load and every batch has a name of its own, and no field is listed twice."),
    COMPLETE_RECORDS(
            "Every load has one fill and one transfer and every batch one extraction, by the machines they name, and every batch is used in a load."),
    FIGURES("Every figure is finite and not below zero."),
    MACHINE_WORK(
            "Planters and sprayers drive, wait, fill, plant with extract or without or spray, and are flushed; rigs drive, draw, load compost, extract, clean, transfer, dump, and are set up and closed up."),

    START("A plan for the rest of a season starts where its machines are, with what is in their tanks."),
    DONE_BEFORE(
            "What was done before a plan starts lies between the season's first day and that moment, once each; machines are free from then on, and promises are for the days ahead."),
    CARRIED_BATCHES(
            "Batches made before a plan starts are recorded once and the same everywhere, made from their lots before their rig is free."),
    CARRIED_MIX(
            "Mix on board when a plan starts is from batches made before, keeps as long as the oldest of them and needs no more compost than they took, or up to 0.1 % more; in a tank it is the load that the plan names."),
    NUMBERS("Loads and batches are numbered in the plan's order, after those made before."),

    ONE_AT_A_TIME("A machine does one thing at a time."),
    SEASON_DAYS("Nothing is done before the season's first day or after its last."),
    WORK_HOURS(
            "All work of a machine lies in one working period of an open day, not before the plan starts and not while the machine is down; only a wait may span a break."),
    OVERTIME(
            "A planter plants past the last hours of a day only where that finishes the field or uses up the load, on the same day and no longer than its overtime allows."),
    PLACE("A machine starts where the season says or where it stands, and works where its last drive took it."),
    SET_UP("A rig is set up before its first work of a day, and only then, for at least its setUp time."),
    CLOSE_UP("A rig is closed up after its last work of a day, and only then, for at least its closeUp time."),
    FLUSH(
            "A planter that applied mix is flushed after that on the same day, and before it takes another recipe, for at least its flush time."),
    OPEN_ON_ARRIVAL("No machine drives to a field that rain or wet ground keeps closed when it arrives."),
    COMING_OUT(
            "A planter drives to a field at the earliest on its last working day before it is filled or plants there."),
    MOUNTED(
            "A sprayer that is mounted on a rig is that rig: no other rig fills it, and what both do is one thing at a time and where the last drive of either ended."),
    ROAD_DISTANCE("A drive is as long as the road between its places."),
    ROAD_TIME("A drive takes at least distance over road speed, and for a planter its move time as well."),

    FIELD_AREA("The planted and unplanted areas of a field add up to its area."),
    UNPLANTED_REASON("An unplanted field has an area above zero and a reason."),
    PLANTING_ORDER("A planter plants only fields of its planting order, in that order."),
    ALLOWED_PLANTER("A field is assigned to and planted or sprayed by a machine that may do it."),
    WITHOUT_EXTRACT(
            "A field is planted without extract only where the season allows that, and one that is to be planted without gets no load."),
    LONGEST_WAIT(
            "Where fields may be planted without extract, a planter that could plant on where it stands waits for no rig longer than its longest wait."),
    WINDOW_OPENING("No field is planted before its window opens."),
    FIXED_DAY("No field is started before the day that it is fixed to."),
    RAIN_CLOSURE("No field is planted while rain, wet ground or what people said of it keeps it closed."),
    SPRAY_HOURS("A sprayer sprays only in its spray hours."),
    WAIT_REASON(
            "A wait for dry ground starts while rain or wet ground closes the field that is planted next, a wait for a window before it opens, a wait for spray hours outside them, and after a wait for hours the fill fits the hours of both machines no earlier."),
    WAIT_START(
            "A wait for a rig, water, compost or hours starts when the field that is planted next is open and dry, and may be sprayed."),
    WAIT_END(
            "A wait for the field that is planted next ends when that is open and dry or the planter is filled, any other when it is"
                    + " filled; or the planter sets off for that field, in which it goes on waiting."),
    FIELD_CAPACITY("No planter plants faster than its effective field capacity."),

    LOAD_ON_BOARD("A planter plants from its last fill, and from no other load."),
    RECIPE("The recipe of a load is the recipe of every field planted from it."),
    MIX_RATE("The mix applied from a load is the planted area times the mix rate of its recipe."),
    LOAD_BALANCE("All mix that is transferred for a load is applied or dumped."),
    LEAST_FILL(
            "A fill of less than the planter's least fill finishes a field, a mix or the compost, or is the first since the planter's hours began or the ground dried."),
    TANK_CAPACITY("A load is above zero and at most the planter's tank plus 0.1 %."),
    FILL_AND_TRANSFER("The fill and the transfer of a load are one event: same place, same start, same end."),
    TRANSFER_TIME(
            "A transfer takes the planter's fill setup plus the litres over the rig's transfer rate; into a sprayer that is mounted on the rig, the fill setup alone."),
    USE_BY(
            "The use-by time of a load is the end of its oldest batch plus the hold time of its recipe, in seconds that pass, also where clocks are changed."),
    RESERVE(
            "The last drop of a load that is made by the plan is planted the reserve of its recipe before its use-by time; of a load that has less, the plan says so."),
    FRESHNESS("Nothing from a load is planted after its use-by time."),
    LAST_DROP(
            "The last drop of a load is the end of the last planting from it, or the start of the plan if nothing is planted from it."),
    MIX_BATCHES("A load names all batches of its mix, in the order they were made."),
    BATCH_BEFORE_LOAD("The batches of a load are made by its rig and end before its transfer starts."),

    BATCH_COMPOST("A batch takes compost, and at most the rig's batch compost plus a gram."),
    BATCH_WATER("A batch takes its share of the drum's water, at most the drum."),
    BATCH_TIME("A batch takes at least its share of the rig's batch time, and at least the rig's least batch time."),
    EVEN_BATCHES(
            "Batches that are made for one load or mix take the same compost, to a gram, and no more of them are made than"
                    + " the drum asks for."),
    BATCH_RECORD("A batch starts and ends with its rig's extraction."),
    BATCH_PLACE("Batches are made where the rig extracts: beside the planter they are for, or at a water point."),
    CLEANING("After a batch the rig is cleaned before the next one, for at least its clean time."),

    COMPOST_RATE("The compost of batches is what the mix made from them needs by its recipe, or up to 0.1 % less."),
    LOT_SUM("What a batch takes from lots adds up to its compost."),
    LOT_DATE("No lot is used, or loaded from, before it is on hand."),
    LOT_STOCK("No lot gives more than it has."),
    LOT_ORDER(
            "An earlier lot is used up, to a gram, before the next is started; where compost is fetched, it is loaded in"
                    + " whole by some rig."),
    LOADING_PLACE("Compost is loaded where its lot lies."),
    LOADING_TIME("To load compost takes at least its mass times the rig's loading time."),
    COMPOST_ON_BOARD("Where compost is fetched, a batch takes no more of a lot than its rig has on board."),
    COMPOST_LOAD("A rig never has more compost on board than it holds."),
    PAYLOAD(
            "Where compost is fetched, a vehicle's payload holds its empty weight, the water or mix and the compost on board."),

    WATER_ON_BOARD("A rig transfers and dumps no more than it has, plus 0.1 % of what it did since its last draw."),
    NURSE_TANK("A rig never has more on board than its nurse tank holds."),
    DRAW_PLACE("Water is drawn at water points."),
    DRAW_TIME("A draw takes at least the time to hook up, the treatment time and the litres over the point's flow."),
    DRAW_HOURS("Water is drawn while the water point is open."),
    HOSES("No more rigs draw at once than the water point has hoses."),
    DAILY_LIMIT("The draws that start on one date stay within the water point's daily limit."),

    TOTALS("Every total is what the activities, loads and batches add up to."),
    BILL(
            "A plan that is judged by money has a bill: hours at work, roads, compost, water, overtime, and late, unplanted and untreated area, each times its price."),
    SCORE(
            "The score breaks no rule and is what late, untreated and unplanted areas, or by money the bill, and fills, water and compost trips, waits and drives add up to."),
    BOUND("No total and no score is better than the bound beside it."),
    PROVEN_BEST("A plan that is proven best has the score that the best plan is said to have."),
    BOTTLENECKS(
            "Each resource is named once among the bottlenecks, and its shares are of what is late, unplanted or waited for.");

    private final String sentence;

    Rule(String sentence) {
        this.sentence = sentence;
    }

    /** The rule in one sentence. */
    public String sentence() {
        return sentence;
    }
}
