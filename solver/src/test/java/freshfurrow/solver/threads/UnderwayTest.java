package freshfurrow.solver.threads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

final class UnderwayTest {
    @Test
    void workIsDoneBesideWhoeverBeganIt() {
        CountDownLatch told = new CountDownLatch(1);
        Underway<String> work = Underway.begin("waiting", () -> {
            try {
                told.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return "done";
        });
        told.countDown();
        assertThat(work.result()).isEqualTo("done");
    }

    @Test
    void whoAsksForTheResultGetsWhatTheWorkThrew() {
        Underway<String> work = Underway.begin("failing", () -> {
            throw new IllegalArgumentException("no load L9");
        });
        assertThatThrownBy(work::result)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no load L9");
    }
}
