package freshfurrow.cli.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.parallel.ResourceLock;

/** Tests that take a {@link Browser}: one class at a time, as a Chromium can be told one thing at a time. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(BrowserOfTests.class)
@ResourceLock("chromium")
@interface InBrowser {}
