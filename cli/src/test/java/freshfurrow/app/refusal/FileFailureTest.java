package freshfurrow.app.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import org.junit.jupiter.api.Test;

final class FileFailureTest {
    @Test
    void aFullDiskIsNamedAsTheSystemNamesIt() {
        assertThat(FileFailure.reason(new FileSystemException("plan.json", null, "No space left on device")))
                .isEqualTo("No space left on device");
    }

    @Test
    void aForbiddenFolderIsAMatterOfPermission() {
        assertThat(FileFailure.reason(new AccessDeniedException("plan.json"))).isEqualTo("permission denied");
    }

    @Test
    void aFailureWithoutWordsIsNamedByItsKind() {
        assertThat(FileFailure.reason(new IOException())).isEqualTo("IOException");
    }
}
