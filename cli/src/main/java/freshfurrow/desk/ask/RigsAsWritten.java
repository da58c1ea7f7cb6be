package freshfurrow.desk.ask;

import freshfurrow.app.springs.VariantFile;
import java.util.Set;

/** The rigs of the season as its file has them. */
public interface RigsAsWritten {
    Set<String> ids();

    /** The name of the season file. */
    String seasonFile();

    /** A variant with one more rig like the one of an id. */
    VariantFile second(String rig);
}
