package freshfurrow.desk.server;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A secret of each role; the owner's is drawn anew for every desk. Whoever opens its link has that role from then on. */
final class Keys {
    /** As many as nobody can guess. */
    private static final int BITS = 160;

    private final Map<Role, String> secrets;

    private Keys(Map<Role, String> secrets) {
        this.secrets = secrets;
    }

    /** @param crew that of the crew, which is the same day after day */
    static Keys with(String crew) {
        return new Keys(Map.of(Role.CREW, crew, Role.OWNER, drawn()));
    }

    /** A new secret: 40 hexadecimal digits. */
    static String drawn() {
        SecureRandom random = new SecureRandom();
        byte[] bytes = new byte[BITS / Byte.SIZE];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    String of(Role role) {
        return secrets.get(role);
    }

    /** The role that a secret opens. How long it takes tells nothing of the secrets. */
    Optional<Role> role(@Nullable String secret) {
        byte[] given = String.valueOf(secret).getBytes(StandardCharsets.UTF_8);
        return secrets.entrySet().stream()
                .filter(key -> MessageDigest.isEqual(key.getValue().getBytes(StandardCharsets.US_ASCII), given))
                .map(Map.Entry::getKey)
                .findAny();
    }
}
