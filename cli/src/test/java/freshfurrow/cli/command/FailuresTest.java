package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.util.List;
import org.junit.jupiter.api.Test;

final class FailuresTest {
    @Test
    void aRefusalIsShownAsItIs() {
        assertThat(Failures.lines(new Refusal(List.of("one", "two")))).containsExactly("one", "two");
    }

    @Test
    void anErrorOfTheProgramIsOwnedWithoutATrace() {
        List<String> lines = Failures.lines(new IllegalStateException("a\nb"));
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).startsWith("An error of the program itself").endsWith("a b");
    }

    @Test
    void aFullDiskIsNamedAsTheSystemNamesIt() {
        assertThat(Failures.reason(new FileSystemException("plan.json", null, "No space left on device")))
                .isEqualTo("No space left on device");
    }

    @Test
    void aForbiddenFolderIsAMatterOfPermission() {
        assertThat(Failures.reason(new AccessDeniedException("plan.json"))).isEqualTo("permission denied");
    }

    @Test
    void aFailureWithoutWordsIsNamedByItsKind() {
        assertThat(Failures.reason(new IOException())).isEqualTo("IOException");
    }
}
