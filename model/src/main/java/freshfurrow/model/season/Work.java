package freshfurrow.model.season;

import java.util.Locale;

/** What is done to a field, which only machines of that kind do. */
public enum Work {
    /** Mix goes into the furrow, with seed. */
    PLANT,
    /** Mix goes onto pasture, cover crops, trees or beds. */
    SPRAY;

    /** Its name in files, and what people say of it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
