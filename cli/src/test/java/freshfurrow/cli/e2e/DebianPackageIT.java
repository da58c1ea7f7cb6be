package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** What a grower does with the Debian package, on a system that has neither Java nor Maven. */
@EnabledIfSystemProperty(
        named = "packages",
        matches = ".*",
        disabledReason = "making packages takes minutes: -Dpackages")
final class DebianPackageIT {
    private static final String EXAMPLES = "/usr/share/doc/freshfurrow/examples/first-season";

    @Test
    void isInstalledUsedAndRemovedAndLeavesNothingButWhatTheGrowerMade() throws Exception {
        Path debian = MadePackages.debian();
        try (CleanRoot root = CleanRoot.make()) {
            root.asRoot("sh", "-c", "mkdir -p /home/grower && chown 1000:1000 /home/grower");
            Map<String, String> before = root.files();
            Files.copy(debian, root.folder().resolve("freshfurrow.deb"));

            root.asRoot("dpkg", "-i", "/freshfurrow.deb");
            Files.delete(root.folder().resolve("freshfurrow.deb"));
            everyLibraryOfTheSystemIsThere(root);
            itIsUsed(root);
            Set<String> own = new TreeSet<>(root.files().keySet());
            own.removeIf(path -> !path.startsWith("/home/grower/"));
            root.asRoot("dpkg", "-P", "freshfurrow");

            Map<String, String> after = root.files();
            assertThat(own).contains("/home/grower/Frühjahr/plan/plan.json");
            Set<String> expected = new TreeSet<>(before.keySet());
            expected.addAll(own);
            assertThat(after.keySet()).containsExactlyElementsOf(expected);
            assertThat(before.entrySet().stream()
                            .filter(file -> !file.getValue().equals(after.get(file.getKey())))
                            .map(Map.Entry::getKey))
                    .as("changed, other than what dpkg notes for itself")
                    .allMatch(path -> path.startsWith("/var/lib/dpkg/") || path.equals("/var/log/dpkg.log"));
        }
    }

    private static void itIsUsed(CleanRoot root) throws Exception {
        assertThat(root.asGrower("freshfurrow", "--version").out())
                .isEqualTo(InProcess.run("--version").out());
        root.asRoot("cp", "-r", EXAMPLES, "/home/grower/Frühjahr");
        root.asRoot("chown", "-R", "1000:1000", "/home/grower/Frühjahr");
        String season = "/home/grower/Frühjahr";
        Launcher.Result planned = root.asGrower("freshfurrow", "plan", season, "--steps", "100");
        assertThat(planned.exitCode()).as(planned.all()).isZero();
        aDeskOpensAnswersAndCloses(root, season);
        theApplicationsFolderRunsWithoutBeingInstalled(root, season);
    }

    private static void aDeskOpensAnswersAndCloses(CleanRoot root, String season) throws Exception {
        Launcher.Result desk = root.asGrower(new DeskClosed(), "freshfurrow", "desk", season, "--no-browser");
        assertThat(desk.exitCode()).as(desk.all()).isZero();
        assertThat(DeskClosed.withoutLinks(desk.out())).startsWith("The desk is open on this computer: LINK");
    }

    private static void theApplicationsFolderRunsWithoutBeingInstalled(CleanRoot root, String season) throws Exception {
        root.asRoot("cp", "-a", "/usr/lib/freshfurrow", "/home/grower/my programs");
        Launcher.Result audited =
                root.asGrower("/home/grower/my programs/bin/freshfurrow", "audit", season, season + "/plan");
        assertThat(audited.exitCode()).as(audited.all()).isZero();
        if (MadePackages.javaFeature() >= 19) {
            for (String start : List.of("/usr/bin/freshfurrow", "/home/grower/my programs/bin/freshfurrow")) {
                Launcher.Result started = root.asGrower("env", "JAVA_TOOL_OPTIONS=-Xshare:on", start, "--version");
                assertThat(started.exitCode())
                        .as("with the archive of classes: " + started.all())
                        .isZero();
            }
        }
    }

    /** Those of its own Java find {@code libjvm} when it runs. */
    private static void everyLibraryOfTheSystemIsThere(CleanRoot root) throws Exception {
        String needed = root.asRoot(
                        "sh",
                        "-c",
                        "ldd $(find /usr/lib/freshfurrow -name '*.so') /usr/lib/freshfurrow/bin/freshfurrow-java")
                .out();
        assertThat(needed).contains("libc.so.6 => /");
        assertThat(needed.replace("libjvm.so => not found", "")).doesNotContain("not found");
    }
}
