package freshfurrow.cli.text;

import freshfurrow.model.plan.Activity;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/** Reminders on a crew's sheet for the work that is on it. They are no instructions: those are the makers' and the law's. */
public enum Caution {
    BACKFLOW("Drawing: keep an open air gap between hose and tank, so that nothing can run back into the source."),
    ROAD(
            "On the road: a part-filled tank surges and can tip the vehicle below the posted speed. Know your loaded weight."),
    LIFTING("Compost: lift small portions close to the body, or two to a lift. Wet compost is heavier than it looks."),
    DUST("Dust and mist carry microbes: mask, gloves and eye protection, and wash before you eat."),
    PRESSURE("Pumps and hoses: stop the pump and let the pressure off before you open a coupling. Guards stay on."),
    FOOD("Food crops: rules may bind what is applied and when (in the United States 21 CFR part 112). Ask first.");

    /** Goes with every caution. */
    public static final String FIRST =
            "Local codes, makers' manuals and licensed practice come first. See docs/safety.md.";

    private final String text;

    Caution(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }

    /** The cautions for a day's work; none when there is no work. */
    public static List<Caution> of(Collection<Activity> work) {
        return Arrays.stream(values())
                .filter(caution -> work.stream().anyMatch(caution::appliesTo))
                .toList();
    }

    private boolean appliesTo(Activity activity) {
        return switch (this) {
            case BACKFLOW -> activity instanceof Activity.Draw;
            case ROAD -> activity instanceof Activity.Move;
            case LIFTING -> activity instanceof Activity.Extract;
            case DUST -> activity instanceof Activity.Extract || activity instanceof Activity.Clean;
            case PRESSURE -> activity instanceof Activity.Transfer;
            case FOOD -> activity instanceof Activity.Plant;
        };
    }
}
