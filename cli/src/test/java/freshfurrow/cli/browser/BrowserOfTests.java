package freshfurrow.cli.browser;

import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands out tabs of one Chromium, which starts for the first and ends with all tests. What a class or a test is given is closed behind
 * it, and takes size, light and medium along.
 */
final class BrowserOfTests implements BeforeAllCallback, ParameterResolver {
    private static final Namespace SPACE = Namespace.create(BrowserOfTests.class);

    /** Here, as tests without Chromium can still be skipped. */
    @Override
    public void beforeAll(ExtensionContext tests) {
        chromium(tests);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext test) {
        Browser browser = new Browser(chromium(test).driver());
        test.getStore(SPACE).put(Browser.class, browser);
        return browser;
    }

    private static Chromium chromium(ExtensionContext tests) {
        return tests.getRoot()
                .getStore(SPACE)
                .getOrComputeIfAbsent(Chromium.class, none -> Chromium.start(), Chromium.class);
    }
}
