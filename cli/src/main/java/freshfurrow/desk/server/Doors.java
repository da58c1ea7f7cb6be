package freshfurrow.desk.server;

import java.util.Set;

/**
 * Where the desk is reached, and by whom.
 *
 * @param address it listens on
 * @param names under which it is reached
 * @param port 0 for any that is free
 * @param crewKey the secret that lets a crew in
 */
public record Doors(String address, Set<String> names, int port, String crewKey) {
    /** Only this computer. */
    public static final String LOOPBACK = "127.0.0.1";

    /** All networks that this computer is in. */
    public static final String EVERYWHERE = "0.0.0.0";

    public Doors {
        names = Set.copyOf(names);
    }
}
