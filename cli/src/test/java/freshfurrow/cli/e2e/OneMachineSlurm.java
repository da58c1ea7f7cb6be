package freshfurrow.cli.e2e;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Slurm on this machine alone, for one test. The script that runs it waits for the end of what it reads: that comes with the end of the
 * test, also when the test is killed, and then the script stops all it has started and removes its folder.
 */
record OneMachineSlurm(Process script, Path folder) implements AutoCloseable {
    private static final Path SCRIPT =
            Launcher.projectFolder().resolve("cli/src/test/resources/freshfurrow/cli/e2e/slurm.sh");
    private static final List<String> NEEDED = List.of("slurmctld", "slurmd", "sbatch", "munged", "setpriv");
    private static final long MOST_SECONDS_TO_STOP = 30;

    /** Starts it. Skips the test where nobody may start it, or where it is not installed. */
    static OneMachineSlurm start() throws IOException {
        if (!"root".equals(System.getProperty("user.name"))) {
            return abort("Slurm starts only as root; the job files were not tried");
        }
        if (!NEEDED.stream().allMatch(OneMachineSlurm::isInstalled)) {
            String missing = "Slurm is not installed (Debian: slurmctld, slurmd, slurm-client, munge);"
                    + " the job files were not tried";
            return abort(missing);
        }
        Process script = new ProcessBuilder("bash", SCRIPT.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String folder = script.inputReader(StandardCharsets.UTF_8).readLine();
        return folder == null
                ? abort("Slurm does not start here; the job files were not tried")
                : new OneMachineSlurm(script, Path.of(folder));
    }

    private static boolean isInstalled(String program) {
        return Stream.of("/usr/sbin", "/usr/bin").anyMatch(bin -> Files.isExecutable(Path.of(bin, program)));
    }

    /** What a command line prints that runs in a folder and succeeds. */
    String run(Path in, String... command) throws Exception {
        Map<String, String> environment = Map.of(
                "SLURM_CONF",
                folder.resolve("slurm.conf").toString(),
                "PATH",
                Launcher.projectFolder() + ":/usr/sbin:" + System.getenv("PATH"));
        Launcher.Result result = Launcher.result(Launcher.start(in, environment, List.of(command)));
        return result.exitCode() == 0 ? result.out().strip() : fail(String.join(" ", command) + ": " + result.all());
    }

    @Override
    public void close() throws IOException {
        script.getOutputStream().close();
        try {
            if (!script.waitFor(MOST_SECONDS_TO_STOP, TimeUnit.SECONDS)) {
                fail("Slurm does not stop");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
