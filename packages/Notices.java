import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Writes what a package has to say of others' work in it, run in the folder of the project after a build:
 * {@code java packages/Notices.java FOLDER}. Into the folder go {@code third-party.txt}, which names each library with its licenses and
 * has their texts, and {@code freshfurrow.cdx.json}, the list of parts (CycloneDX) with the Java runtime in it. A library without a
 * license, or without its text, is refused.
 */
final class Notices {
    private static final Path BUILT = Path.of("cli", "target");
    private static final Path OWN_TEXTS = Path.of("packages", "licenses");
    private static final String RUNTIME = """
              "components" : [
                {
                  "type" : "platform",
                  "bom-ref" : "java-runtime",
                  "publisher" : "%s",
                  "name" : "Java runtime",
                  "version" : "%s",
                  "licenses" : [
                    {
                      "expression" : "GPL-2.0-only WITH Classpath-exception-2.0"
                    }
                  ]
                },
            """.stripTrailing();

    private final XPath xpath = XPathFactory.newInstance().newXPath();
    private final List<String> problems = new ArrayList<>();
    /** Libraries in order, and the texts with the libraries that they are for. */
    private final Map<String, String> licenses = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final Map<String, List<String>> texts = new LinkedHashMap<>();

    private final Set<String> names = new HashSet<>();

    public static void main(String[] args) throws Exception {
        System.exit(new Notices().write(Path.of(args[0])));
    }

    private int write(Path folder) throws Exception {
        Document parts = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(BUILT.resolve("freshfurrow.cdx.xml").toFile());
        NodeList libraries = (NodeList) xpath.evaluate(
                "/*[local-name()='bom']/*[local-name()='components']/*", parts, XPathConstants.NODESET);
        for (int i = 0; i < libraries.getLength(); i++) {
            if (!value(libraries.item(i), "group").equals("freshfurrow")) {
                look(libraries.item(i));
            }
        }
        for (Path unpacked : files(BUILT.resolve("licenses"))) {
            if (!names.contains(unpacked.getFileName().toString().replaceFirst("-jar$", ""))) {
                problems.add(unpacked + " is of no library in the list of parts, which is older: build with the network on,"
                        + " mvn -q -B -DskipTests clean package");
            }
        }
        problems.forEach(System.err::println);
        Files.writeString(folder.resolve("third-party.txt"), text());
        Files.writeString(folder.resolve("freshfurrow.cdx.json"), withRuntime());
        return problems.isEmpty() ? 0 : 1;
    }

    private void look(Node library) throws XPathExpressionException, IOException {
        String name = value(library, "name");
        names.add(name);
        String title = value(library, "group") + ":" + name + " " + value(library, "version");
        List<String> named = values(library, "*[local-name()='licenses']//*[local-name()='id' or local-name()='name'"
                + " or local-name()='expression']");
        if (named.isEmpty()) {
            problems.add(title + " has no license in its pom; use another library, or ask its authors.");
        }
        Path own = OWN_TEXTS.resolve(name + ".txt");
        licenses.put(title, Files.exists(own) ? identified(own, named) : String.join(", or ", named));
        List<Path> files = Files.exists(own) ? List.of(own) : files(BUILT.resolve("licenses").resolve(name + "-jar"));
        for (Path file : files) {
            texts.computeIfAbsent(Files.readString(file).strip(), text -> new ArrayList<>()).add(title);
        }
        // Apache's is the program's own, so its text is there anyway.
        if (files.isEmpty() && !named.contains("Apache-2.0")) {
            problems.add(title + " (" + String.join(", ", named) + ") came without the text of its license; write it, with its"
                    + " copyright line, to " + own + ".");
        }
    }

    /** What the text says it is, where a pom says it wrong. */
    private static String identified(Path text, List<String> named) throws IOException {
        String mark = "SPDX-License-Identifier: ";
        String first = Files.readAllLines(text).get(0);
        return first.startsWith(mark) ? first.substring(mark.length()) : String.join(", or ", named);
    }

    private static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private String text() {
        StringBuilder all = new StringBuilder("""
                freshfurrow is licensed under Apache-2.0, see LICENSE. It contains these libraries, each under a license of its own;
                where several are named, any of them may be chosen. Their texts follow. That of Apache-2.0 is also in LICENSE. The
                Java runtime has its licenses in its folder 'legal'.

                """);
        licenses.forEach((title, named) -> all.append(title).append(": ").append(named).append('\n'));
        texts.forEach((text, titles) -> all.append("\n\n")
                .append("=".repeat(80))
                .append("\n")
                .append(String.join("\n", titles))
                .append("\n")
                .append("-".repeat(80))
                .append("\n")
                .append(text.replace("\r", ""))
                .append('\n'));
        return all.toString();
    }

    private static String withRuntime() throws IOException {
        String parts = Files.readString(BUILT.resolve("freshfurrow.cdx.json")).replace("\r\n", "\n");
        String start = "\n  \"components\" : [\n";
        if (parts.indexOf(start) != parts.lastIndexOf(start) || !parts.contains(start)) {
            throw new IllegalStateException("The list of parts does not have the form it had: change Notices.java.");
        }
        return parts.replace(
                start, "\n" + RUNTIME.formatted(System.getProperty("java.vendor"), Runtime.version()) + "\n");
    }

    private String value(Node library, String name) throws XPathExpressionException {
        return String.join("", values(library, "*[local-name()='" + name + "']"));
    }

    private List<String> values(Node library, String path) throws XPathExpressionException {
        NodeList found = (NodeList) xpath.evaluate(path, library, XPathConstants.NODESET);
        List<String> values = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            values.add(found.item(i).getTextContent().strip());
        }
        return values;
    }
}
