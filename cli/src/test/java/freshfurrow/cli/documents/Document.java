package freshfurrow.cli.documents;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.ext.heading.anchor.IdGenerator;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/**
 * A document of the project.
 *
 * @param path of its file, from the project's folder
 * @param tree its text
 */
public record Document(Path path, Node tree) {
    private static final Path TOP = Path.of("..");
    private static final Pattern NAMED = Pattern.compile("<a id=\"([^\"]+)\">");

    /**
     * A block that is shown as it is.
     *
     * @param kind what stands behind its fence
     */
    public record Block(String kind, String text) {}

    /** All documents of the project, by their names. */
    public static List<Document> all() {
        try (Stream<Path> docs = Files.walk(TOP.resolve("docs"));
                Stream<Path> scenarios = Files.walk(TOP.resolve("scenarios"))) {
            return Stream.of(Stream.of(TOP.resolve("README.md"), TOP.resolve("DEVELOPERS.md")), docs, scenarios)
                    .flatMap(files -> files)
                    .filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .map(file -> read(TOP.relativize(file)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads one.
     *
     * @param path from the project's folder
     */
    public static Document read(Path path) {
        try {
            return new Document(path, Parser.builder().build().parse(Files.readString(TOP.resolve(path))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Its file, from where tests are run. */
    public Path file() {
        return TOP.resolve(path);
    }

    /** Where its links and pictures lead. */
    List<String> targets() {
        List<String> targets = new ArrayList<>();
        tree.accept(new AbstractVisitor() {
            @Override
            public void visit(Link link) {
                targets.add(link.getDestination());
                visitChildren(link);
            }

            @Override
            public void visit(Image image) {
                targets.add(image.getDestination());
            }
        });
        return targets;
    }

    /** The names by which links lead to its headings and other places. */
    Set<String> anchors() {
        Set<String> anchors = new TreeSet<>();
        IdGenerator names = IdGenerator.builder().build();
        tree.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                anchors.add(names.generateId(words(heading)));
            }

            @Override
            public void visit(HtmlInline html) {
                NAMED.matcher(html.getLiteral()).results().forEach(name -> anchors.add(name.group(1)));
            }
        });
        return anchors;
    }

    /** What it shows as it is, block by block. */
    public List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        tree.accept(new AbstractVisitor() {
            @Override
            public void visit(FencedCodeBlock block) {
                blocks.add(new Block(Objects.requireNonNullElse(block.getInfo(), ""), block.getLiteral()));
            }
        });
        return blocks;
    }

    /** What it prints in bold. */
    public List<String> bold() {
        List<String> bold = new ArrayList<>();
        tree.accept(new AbstractVisitor() {
            @Override
            public void visit(StrongEmphasis strong) {
                bold.add(words(strong));
            }
        });
        return bold;
    }

    private static String words(Node node) {
        StringBuilder words = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }
        });
        return words.toString();
    }

    @Override
    public String toString() {
        return path.toString();
    }
}
