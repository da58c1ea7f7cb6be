package freshfurrow.cli.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class LinksTest {
    private static final Path INDEX = Path.of("docs", "README.md");

    static Collection<Document> documents() {
        return Document.all();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void everyLinkLeadsSomewhere(Document document) {
        List<String> lost = inside(document)
                .filter(target -> !Files.exists(file(document, target)))
                .toList();

        assertThat(lost).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void everyLinkToAHeadingFindsIt(Document document) {
        List<String> lost = inside(document)
                .filter(target -> target.contains("#"))
                .filter(target -> Files.exists(file(document, target)))
                .filter(target -> !Document.read(Path.of("..").relativize(file(document, target)))
                        .anchors()
                        .contains(target.substring(target.indexOf('#') + 1)))
                .toList();

        assertThat(lost).isEmpty();
    }

    @Test
    void everyDocumentIsFoundFromTheIndex() {
        Set<Path> found = new HashSet<>();
        List<Path> open = new ArrayList<>(List.of(INDEX));
        while (!open.isEmpty()) {
            Path path = open.remove(open.size() - 1);
            if (found.add(path)) {
                Document document = Document.read(path);
                inside(document)
                        .map(target -> Path.of("..").relativize(file(document, target)))
                        .filter(file -> file.toString().endsWith(".md"))
                        .forEach(open::add);
            }
        }

        assertThat(found)
                .containsAll(Document.all().stream()
                        .map(Document::path)
                        .filter(path -> path.startsWith("docs"))
                        .toList());
    }

    private static Stream<String> inside(Document document) {
        return document.targets().stream().filter(target -> !target.matches("[a-z]+:.*"));
    }

    private static Path file(Document document, String target) {
        String path = target.replaceFirst("#.*", "");
        return path.isEmpty()
                ? document.file()
                : document.file().resolveSibling(path).normalize();
    }
}
