package freshfurrow.model.plan;

import java.util.List;
import java.util.Locale;

/** The names of activities in a plan file. */
enum ActivityKind {
    MOVE(Activity.Move.class),
    WAIT(Activity.Wait.class),
    FILL(Activity.Fill.class),
    PLANT(Activity.Plant.class),
    DRAW(Activity.Draw.class),
    EXTRACT(Activity.Extract.class),
    CLEAN(Activity.Clean.class),
    TRANSFER(Activity.Transfer.class),
    DUMP(Activity.Dump.class);

    private final Class<? extends Activity> type;

    ActivityKind(Class<? extends Activity> type) {
        this.type = type;
    }

    static ActivityKind of(Activity activity) {
        for (ActivityKind kind : values()) {
            if (kind.type.isInstance(activity)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("an activity without a kind: " + activity);
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The keys of an activity of this kind besides kind, start and end, in the order of the file. */
    List<String> ownKeys() {
        return switch (this) {
            case MOVE -> List.of("from", "to", "km");
            case WAIT -> List.of("at", "why");
            case FILL -> List.of("at", "load");
            case PLANT -> List.of("field", "load", "areaHa");
            case DRAW, DUMP -> List.of("at", "litres");
            case EXTRACT -> List.of("at", "batch");
            case CLEAN -> List.of("at");
            case TRANSFER -> List.of("at", "load", "litres");
        };
    }
}
