package freshfurrow.desk.server;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A secret of each role, drawn anew for every desk. Whoever opens its link has that role from then on. */
final class Keys {
    /** As many as nobody can guess. */
    private static final int BITS = 160;

    private final Map<Role, String> secrets;

    private Keys(Map<Role, String> secrets) {
        this.secrets = secrets;
    }

    static Keys drawn() {
        SecureRandom random = new SecureRandom();
        return new Keys(Arrays.stream(Role.values()).collect(Collectors.toMap(role -> role, role -> secret(random))));
    }

    private static String secret(SecureRandom random) {
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
