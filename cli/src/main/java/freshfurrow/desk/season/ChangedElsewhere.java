package freshfurrow.desk.season;

import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.editing.EditAnswer.ChangedMeanwhile;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Unanswered;

/** A change that is not made, as somebody else made another in the same file. */
final class ChangedElsewhere extends Unanswered {
    private static final long serialVersionUID = 1;

    private final transient ChangedMeanwhile changed;

    ChangedElsewhere(ChangedMeanwhile changed) {
        super(409, changed.file() + " was changed elsewhere meanwhile, so nothing was written.");
        this.changed = changed;
    }

    @Override
    protected void describe(ObjectNode answer) {
        ObjectNode both = Json.object().put("file", changed.file());
        changed.onDisk().ifPresent(text -> both.put("now", text));
        changed.asEdited().ifPresent(text -> both.put("yours", text));
        answer.set("changed", both);
    }
}
