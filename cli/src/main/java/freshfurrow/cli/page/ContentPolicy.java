package freshfurrow.cli.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** What a browser lets the page do: run its one script, use its one style, and nothing else; no network at all. */
final class ContentPolicy {
    private ContentPolicy() {}

    /** A policy as in Content Security Policy Level 3 that names style and script by their hash. */
    static String of(String style, String script) {
        return "default-src 'none'; style-src '" + hash(style) + "'; script-src '" + hash(script)
                + "'; base-uri 'none'; form-action 'none'";
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
