package freshfurrow.model.read.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All test cases of RFC 7396, JSON Merge Patch (Hoffman and Snell, IETF 2014), appendix A. */
final class MergePatchTest {
    @ParameterizedTest(name = "{0} with {1} is {2}")
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
                    {"a":"b"}           ; {"a":"c"}                       ; {"a":"c"}
                    {"a":"b"}           ; {"b":"c"}                       ; {"a":"b","b":"c"}
                    {"a":"b"}           ; {"a":null}                      ; {}
                    {"a":"b","b":"c"}   ; {"a":null}                      ; {"b":"c"}
                    {"a":["b"]}         ; {"a":"c"}                       ; {"a":"c"}
                    {"a":"c"}           ; {"a":["b"]}                     ; {"a":["b"]}
                    {"a":{"b":"c"}}     ; {"a":{"b":"d","c":null}}        ; {"a":{"b":"d"}}
                    {"a":[{"b":"c"}]}   ; {"a":[1]}                       ; {"a":[1]}
                    ["a","b"]           ; ["c","d"]                       ; ["c","d"]
                    {"a":"b"}           ; ["c"]                           ; ["c"]
                    {"a":"foo"}         ; null                            ; null
                    {"a":"foo"}         ; "bar"                           ; "bar"
                    {"e":null}          ; {"a":1}                         ; {"e":null,"a":1}
                    [1,2]               ; {"a":"b","c":null}              ; {"a":"b"}
                    {}                  ; {"a":{"bb":{"ccc":null}}}       ; {"a":{"bb":{}}}
                    """)
    void aPatchDoesAsTheStandardsTableSays(String original, String patch, String result) throws FileProblem {
        Node merged = MergePatch.apply(tree("original.json", original), tree("patch.json", patch));
        assertThat(json(merged)).isEqualTo(json(tree("result.json", result)));
    }

    private static Node tree(String file, String text) throws FileProblem {
        return TreeReader.yaml(TextFile.of(file, text));
    }

    private static String json(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().entrySet().stream()
                    .map(entry -> '"' + entry.getKey() + "\":" + json(entry.getValue()))
                    .collect(Collectors.joining(",", "{", "}"));
        }
        if (node instanceof Node.Sequence sequence) {
            return sequence.items().stream().map(MergePatchTest::json).collect(Collectors.joining(",", "[", "]"));
        }
        return node instanceof Node.Text text ? '"' + text.text() + '"' : "null";
    }
}
