package freshfurrow.cli.e2e;

import freshfurrow.cli.command.Freshfurrow;

/** Runs the command that logs a note, one after the other, and says of each that it was done, until the process is killed. */
final class LogUntilKilled {
    private LogUntilKilled() {}

    /**
     * Logs without end.
     *
     * @param args the season, a time of it, and what the notes begin with
     */
    public static void main(String[] args) {
        for (int i = 0; ; i++) {
            String note = args[2] + "-" + i;
            if (Freshfurrow.run("log", args[0], "note", note, "--at", args[1]) != 0) {
                throw new IllegalStateException(note + " was not logged");
            }
            System.out.println("safe " + note);
            System.out.flush();
        }
    }
}
