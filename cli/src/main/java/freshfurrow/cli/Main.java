package freshfurrow.cli;

import freshfurrow.cli.command.Freshfurrow;

/** The program. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(Freshfurrow.run(args));
    }
}
