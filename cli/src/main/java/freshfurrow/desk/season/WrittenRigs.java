package freshfurrow.desk.season;

import freshfurrow.app.editing.SeasonEditing;
import freshfurrow.app.springs.SecondMachine;
import freshfurrow.app.springs.VariantFile;
import freshfurrow.desk.ask.RigsAsWritten;
import freshfurrow.desk.server.Unanswered;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The rigs of the season on the desk, as its file has them. */
public final class WrittenRigs implements RigsAsWritten {
    private final SeasonEditing editing;
    private final DeskSeason season;

    public WrittenRigs(SeasonEditing editing, DeskSeason season) {
        this.editing = editing;
        this.season = season;
    }

    @Override
    public Set<String> ids() {
        Set<String> ids = new TreeSet<>();
        rigs().keySet().forEach(id -> ids.add(String.valueOf(id)));
        return ids;
    }

    @Override
    public String seasonFile() {
        return editing.draft().digests().keySet().stream().findFirst().orElse("season.yaml");
    }

    @Override
    public VariantFile second(String rig) {
        if (!(rigs().get(rig) instanceof Map<?, ?> keys)) {
            throw Unanswered.senseless("There is no rig " + rig + ".");
        }
        return SecondMachine.like(season.given(), rig, keys);
    }

    private Map<?, ?> rigs() {
        return editing.draft().tree().get("rigs") instanceof Map<?, ?> rigs ? rigs : Map.of();
    }
}
