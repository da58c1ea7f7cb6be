package freshfurrow.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote down. */
final class Version implements IVersionProvider {
    private static final String RESOURCE = "version.txt";

    @Override
    public String[] getVersion() throws IOException {
        try (InputStream version = Version.class.getResourceAsStream(RESOURCE)) {
            if (version == null) {
                throw new IOException("the program was built without its " + RESOURCE);
            }
            return new String[] {"freshfurrow " + new String(version.readAllBytes(), StandardCharsets.UTF_8).strip()};
        }
    }
}
