package freshfurrow.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ContentPolicyTest {
    /** Script and hash are an example in the W3C's Content Security Policy (from memory). */
    @Test
    void aScriptIsNamedByItsHash() {
        assertThat(ContentPolicy.of("", "alert('Hello, world.');"))
                .contains("script-src 'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='");
    }

    @Test
    void nothingElseIsAllowed() {
        assertThat(ContentPolicy.of("a", "b")).startsWith("default-src 'none';").doesNotContain("unsafe", "http");
    }
}
