package freshfurrow.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ContentPolicyTest {
    /** The hash of this very script is the example of Content Security Policy Level 3, section 2.3.1. */
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
