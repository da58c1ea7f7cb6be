package freshfurrow.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class InlineTextTest {
    @Test
    void nothingInJsonCanEndAScriptElementOrOpenACommentInIt() {
        ObjectNode data = JsonNodeFactory.instance.objectNode().put("name", "</script><!-- & \u2028\u2029");
        assertThat(InlineText.json(data))
                .isEqualTo("{\"name\":\"\\u003c/script\\u003e\\u003c!-- \\u0026 \\u2028\\u2029\"}");
    }

    @Property
    void jsonSaysTheSameAsBefore(@ForAll @StringLength(max = 40) String text) throws Exception {
        ObjectNode data = JsonNodeFactory.instance.objectNode().put(text, text);
        String json = InlineText.json(data);
        assertThat(new ObjectMapper().readTree(json)).isEqualTo(data);
        assertThat(json).doesNotContain("<", ">", "&", "\u2028", "\u2029");
    }

    @Test
    void textInHtmlIsNoMarkup() {
        assertThat(InlineText.html("<b> & \"a\" 'b'")).isEqualTo("&lt;b&gt; &amp; &quot;a&quot; &#39;b&#39;");
    }
}
