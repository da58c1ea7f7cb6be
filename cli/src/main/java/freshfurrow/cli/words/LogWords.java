package freshfurrow.cli.words;

import freshfurrow.app.refusal.LogRefusal;

/** That nothing is added to a log, or made of it. */
final class LogWords implements LogRefusal.Visitor<String> {
    @Override
    public String visit(LogRefusal.NoTimeOfEntry refusal) {
        return "Today is outside the season (" + refusal.first() + " to " + refusal.last()
                + "); give the time with --at, like --at " + refusal.first() + "T15:10";
    }

    @Override
    public String visit(LogRefusal.UnknownException refusal) {
        return "--except: the season has no field and no machine " + refusal.id() + "; it has "
                + String.join(", ", refusal.known());
    }

    @Override
    public String visit(LogRefusal.NotYet refusal) {
        return "--until " + refusal.until() + " is in the future: it is " + refusal.now()
                + " now; a log tells what has happened";
    }

    @Override
    public String visit(LogRefusal.ObstructedLog refusal) {
        return refusal.log() + ": " + refusal.obstacle().words()
                + ", so nothing was added; name the log itself with --log FILE";
    }

    @Override
    public String visit(LogRefusal.UnwritableLog refusal) {
        return refusal.log() + ": cannot be written (" + refusal.reason() + "), so nothing was added";
    }

    @Override
    public String visit(LogRefusal.NothingLearned refusal) {
        return refusal.file() + ": nothing differs from the season file by more than chance, so it was not written";
    }
}
