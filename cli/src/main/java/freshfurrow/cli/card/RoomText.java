package freshfurrow.cli.card;

import freshfurrow.app.season.LoadRoom;
import freshfurrow.app.season.SingleLoad;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.OneLoad;
import java.util.ArrayList;
import java.util.List;

/** Why there is no room for a load, and for what there is. */
final class RoomText {
    private static final double TENTH_HAIR = 1e-3;

    private final CardUnits units;
    private final Applicator planter;
    private final Rig rig;
    private final double areaHa;

    RoomText(Season season, MixingOrder order) {
        units = new CardUnits(season.units());
        planter = season.applicators().get(order.planter());
        rig = season.rigs().get(order.rig());
        areaHa = order.areaHa();
    }

    /** A line a reason; empty when there is room. */
    List<String> lines(LoadRoom room) {
        List<String> reasons = reasons(room.load(areaHa));
        if (reasons.isEmpty()) {
            return reasons;
        }
        double largest = room.largestHa();
        String remedy = largest > 0
                ? "make " + Math.round(Math.ceil(areaHa / largest - TENTH_HAIR)) + " loads, each for " + atMost(largest)
                        + " or less"
                : "no load is small enough; a longer hold time would help";
        return reasons.stream().map(reason -> reason + "; " + remedy).toList();
    }

    private List<String> reasons(SingleLoad single) {
        OneLoad load = single.load();
        List<String> reasons = new ArrayList<>();
        if (single.overTank()) {
            reasons.add(needs(load) + ", but " + planter.id() + "'s tank holds " + volume(planter.tankL()));
        }
        if (single.overNurseTank()) {
            reasons.add(needs(load) + ", but " + rig.id() + "'s nurse tank holds " + volume(rig.nurseTankL()));
        }
        if (single.pastHoldS() > 0) {
            reasons.add("Takes too long: the last of a load for " + area(load.areaHa()) + " would be in the ground "
                    + Figures.toTheSecond(single.pastHoldS()) + " after its use-by time");
        }
        return reasons;
    }

    private String needs(OneLoad load) {
        return "Does not fit: a load for " + area(load.areaHa()) + " is " + volume(load.mixL()) + " of mix";
    }

    /** In whole tenths, rounded down, so that what is asked for has room. */
    private String atMost(double hectares) {
        double tenths = Math.floor(units.figure(Kind.AREA, hectares) * 10 + TENTH_HAIR);
        return CardUnits.number(tenths / 10) + " " + units.symbol(Kind.AREA);
    }

    private String area(double hectares) {
        return units.show(Kind.AREA, hectares);
    }

    private String volume(double litres) {
        return units.show(Kind.VOLUME, litres);
    }
}
