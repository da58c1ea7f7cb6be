package freshfurrow.model.roads;

import java.nio.file.Path;
import java.util.ServiceLoader;

/** Hears of what takes long when roads are measured. A service, as whoever reads a season knows of no map. */
public interface RoadNews {
    /** The one that is there, or one that keeps it to itself. */
    static RoadNews found() {
        return ServiceLoader.load(RoadNews.class).findFirst().orElseGet(Unheard::new);
    }

    /**
     * A map is being read.
     *
     * @param isKept whether it need not be read again the next time
     */
    void reads(Path map, boolean isKept);

    /** Ways between so many places are being measured. */
    void measures(int places);

    /** What was said last is over, well or not. */
    void done();

    /** Where nobody hears of it. */
    final class Unheard implements RoadNews {
        @Override
        public void reads(Path map, boolean isKept) {
            // nobody hears of it
        }

        @Override
        public void measures(int places) {
            // nobody hears of it
        }

        @Override
        public void done() {
            // nobody hears of it
        }
    }
}
