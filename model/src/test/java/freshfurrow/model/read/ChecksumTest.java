package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ChecksumTest {
    private static final String FIELDS = "id,area (ac),lat,lon,crop\nN40,40,41.02,-97.01,corn\n";
    private static final String WAYS = "from,to,distance (mi)\nyard,well,2\nyard,N40,3\nwell,N40,3.5\n";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void itIsTheSha256OfAllFilesInTheOrderOfReading() throws Exception {
        WrittenSeason season = season();
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        for (String text : List.of(season.text(), "{}", FIELDS, WAYS)) {
            digest.update(text.getBytes(StandardCharsets.UTF_8));
        }
        assertThat(sha256(season.read("variant.yaml"))).isEqualTo(HexFormat.of().formatHex(digest.digest()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"season.yaml", "variant.yaml", "fields.csv", "ways.csv"})
    void itChangesWithAnyOfTheFiles(String name) throws IOException {
        String before = sha256(season().read("variant.yaml"));
        Path file = folder.resolve(name);
        Files.writeString(file, Files.readString(file) + "\n");
        assertThat(sha256(SeasonFiles.read(folder, List.of(folder.resolve("variant.yaml")))))
                .isNotEqualTo(before);
    }

    private WrittenSeason season() {
        return WrittenSeason.in(folder)
                .with("roadFactor: 1.3", "matrix: ways.csv")
                .withFields("fields.csv", FIELDS)
                .withFile("ways.csv", WAYS)
                .withFile("variant.yaml", "{}");
    }

    private static String sha256(Reading reading) {
        assertThat(WrittenSeason.problems(reading)).isEmpty();
        return ((Reading.Valid) reading).sha256();
    }
}
