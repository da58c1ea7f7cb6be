package freshfurrow.roads;

import com.graphhopper.routing.ev.BooleanEncodedValue;
import com.graphhopper.routing.ev.DecimalEncodedValue;
import com.graphhopper.routing.ev.DecimalEncodedValueImpl;
import com.graphhopper.routing.ev.SimpleBooleanEncodedValue;
import com.graphhopper.routing.util.EncodingManager;

/** What the graph knows of each stretch of road. A change of these, or of {@link FarmTags}, is a new {@link KeptGraphs#FORM}. */
final class RoadValues {
    /** Limits are kept in steps of this, m and t. */
    static final double LIMIT_STEP = 0.1;

    private static final double SLOWNESS_STEP = 0.1;

    /** Whether farm machines may drive on it, each way. */
    final BooleanEncodedValue open = new SimpleBooleanEncodedValue("open", true);

    /** As how many metres a metre of it counts. */
    final DecimalEncodedValue slowness = new DecimalEncodedValueImpl("slowness", 7, SLOWNESS_STEP, false);

    /** Widest machine, m, up to 12.7; infinite without a limit. */
    final DecimalEncodedValue mostWidthM = new DecimalEncodedValueImpl("width", 7, 0, LIMIT_STEP, false, false, true);

    /** Heaviest machine, t, up to 51.1; infinite without a limit. */
    final DecimalEncodedValue mostWeightT = new DecimalEncodedValueImpl("weight", 9, 0, LIMIT_STEP, false, false, true);

    final EncodingManager all = EncodingManager.start()
            .add(open)
            .add(slowness)
            .add(mostWidthM)
            .add(mostWeightT)
            .build();
}
