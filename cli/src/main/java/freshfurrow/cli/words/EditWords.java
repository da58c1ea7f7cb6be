package freshfurrow.cli.words;

import freshfurrow.app.refusal.EditRefusal;

/** That a season's files are not changed. */
final class EditWords implements EditRefusal.Visitor<String> {
    @Override
    public String visit(EditRefusal.NotByPosition refusal) {
        return refusal.problem().toString();
    }

    @Override
    public String visit(EditRefusal.NothingToUndo refusal) {
        return "There is nothing to undo";
    }

    @Override
    public String visit(EditRefusal.NothingToRedo refusal) {
        return "There is nothing to redo";
    }

    @Override
    public String visit(EditRefusal.ObstructedSeason refusal) {
        return refusal.file() + ": " + refusal.obstacle().words()
                + ", so nothing was changed; put the file itself in its place";
    }

    @Override
    public String visit(EditRefusal.UnwritableSeason refusal) {
        return refusal.season() + ": cannot be written (" + refusal.reason() + "), so nothing was changed";
    }
}
