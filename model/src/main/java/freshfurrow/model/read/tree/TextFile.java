package freshfurrow.model.read.tree;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** The text of a file, which is UTF-8 with or without a byte-order mark. */
public final class TextFile {
    private static final int MEBIBYTE = 1 << 20;
    private static final byte[] MARK = "\uFEFF".getBytes(StandardCharsets.UTF_8);

    private final String name;
    private final String text;
    private final byte[] bytes;

    private TextFile(String name, String text, byte[] bytes) {
        this.name = name;
        this.text = text;
        this.bytes = bytes;
    }

    /** A text that stands in no file. */
    public static TextFile of(String name, String text) {
        return new TextFile(name, text, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same file with another text; with a byte-order mark if it has one now. */
    public TextFile changed(String newText) {
        byte[] encoded = newText.getBytes(StandardCharsets.UTF_8);
        if (!startsWithMark()) {
            return new TextFile(name, newText, encoded);
        }
        byte[] marked = Arrays.copyOf(MARK, MARK.length + encoded.length);
        System.arraycopy(encoded, 0, marked, MARK.length, encoded.length);
        return new TextFile(name, newText, marked);
    }

    private boolean startsWithMark() {
        return bytes.length >= MARK.length && Arrays.equals(bytes, 0, MARK.length, MARK, 0, MARK.length);
    }

    /** Whether its bytes say all of the text: halves of characters cannot be written. */
    public boolean isUnicode() {
        return StandardCharsets.UTF_8.newEncoder().canEncode(text);
    }

    /** As people know it. */
    public String name() {
        return name;
    }

    /** Without a byte-order mark. */
    public String text() {
        return text;
    }

    /** All that the file holds. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** Of all that the file holds, lower-case hex. */
    public String sha256() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Feeds the bytes of the file to a digest. */
    public void addTo(MessageDigest digest) {
        digest.update(bytes);
    }

    /**
     * Reads a file whole.
     *
     * @param mostMebibytes larger files are refused unread
     * @throws FileProblem when it is missing, too large or not text
     */
    public static TextFile read(Path file, String name, int mostMebibytes) throws FileProblem {
        Place place = new Place(name, 0, "");
        byte[] bytes;
        try {
            if (Files.isDirectory(file)) {
                throw new FileProblem(place, "is a folder, not a file", "name the file itself");
            }
            if (!Files.exists(file)) {
                throw new FileProblem(place, "does not exist", "check the name and the folder");
            }
            if (!Files.isRegularFile(file)) {
                throw new FileProblem(place, "is not an ordinary file", "name a file that holds text");
            }
            long size = Files.size(file);
            if (size > (long) mostMebibytes * MEBIBYTE) {
                throw new FileProblem(
                        place,
                        "is " + size / MEBIBYTE + " MiB, more than the " + mostMebibytes + " MiB that can be read",
                        "check that it is the right file; leave out what the season does not need");
            }
            bytes = Files.readAllBytes(file);
        } catch (AccessDeniedException e) {
            throw new FileProblem(place, "may not be read", "give yourself permission to read it");
        } catch (IOException e) {
            throw new FileProblem(place, "cannot be read: " + e.getMessage(), "check the disk and try again");
        }
        return new TextFile(name, decode(bytes, place), bytes);
    }

    private static String decode(byte[] bytes, Place place) throws FileProblem {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(buffer).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            int line = 1;
            for (int i = 0; i < buffer.position(); i++) {
                if (bytes[i] == '\n') {
                    line++;
                }
            }
            throw new FileProblem(
                    new Place(place.file(), line, ""), "is not UTF-8 text here", "save the file again as UTF-8");
        }
    }
}
