package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What tells that a plan's start is as it was written. Nothing else in a plan tells of rain, breakdowns, promises or compost that was used, so a change
 * there would go unseen.
 */
final class StartChecksum {
    static final String KEY = "sha256";

    private StartChecksum() {}

    /** SHA-256 of a start's facts as this program writes them, in lower-case hex. */
    static String of(ObjectNode facts) {
        try {
            byte[] text = facts.toString().getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Refuses a start that was changed; one without a checksum was written before there was any. */
    static PlanStart checked(JsonPlace place, PlanStart start) throws PlanFileException {
        if (place.has(KEY) && !place.text(KEY).equals(of(StartToJson.facts(start)))) {
            throw place.wrong("was changed after it was written");
        }
        return start;
    }
}
