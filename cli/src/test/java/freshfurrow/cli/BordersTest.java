package freshfurrow.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.regex.Pattern;

/** The borders of the solver and of the command line; those of the model are held beside it. */
@AnalyzeClasses(
        packages = "freshfurrow",
        importOptions = {DoNotIncludeTests.class, BordersTest.NoTestJars.class})
class BordersTest {
    /** In the whole build the tests of the model come as a jar. */
    static final class NoTestJars implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("-tests.jar");
        }
    }

    @ArchTest
    static final ArchRule THE_SOLVER_KNOWS_NO_FILES_AND_NO_SCREENS = noClasses()
            .that()
            .resideInAPackage("freshfurrow.solver..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "freshfurrow.cli..", "freshfurrow.model.read..", "picocli..", "java.nio.file..", "com.fasterxml..");

    @ArchTest
    static final ArchRule THE_COMMAND_LINE_LEAVES_THE_SEARCH_TO_THE_SOLVER = noClasses()
            .that()
            .resideInAPackage("freshfurrow.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("ai.timefold..");

    @ArchTest
    static final ArchRule TEXT_SUMS_CARDS_AND_PAGES_KNOW_NO_COMMANDS_AND_NO_FILES = noClasses()
            .that()
            .resideInAnyPackage(
                    "freshfurrow.cli.text..",
                    "freshfurrow.cli.needs..",
                    "freshfurrow.cli.card..",
                    "freshfurrow.cli.day..",
                    "freshfurrow.cli.changes..",
                    "freshfurrow.cli.safety..",
                    "freshfurrow.cli.sheets..",
                    "freshfurrow.cli.page..",
                    "freshfurrow.cli.export..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("freshfurrow.cli.command..", "freshfurrow.solver..", "picocli..", "java.nio.file..");

    @ArchTest
    static final ArchRule ANSWERS_KNOW_NO_COMMANDS_AND_NO_FILES = noClasses()
            .that()
            .resideInAPackage("freshfurrow.cli.why..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("freshfurrow.cli.command..", "picocli..", "java.nio.file..");

    /** The methods of {@code Files} that change what is on the disk begin so. */
    private static final Pattern CHANGING =
            Pattern.compile("(write|create|new(Output|BufferedWriter|ByteChannel)|copy|move|delete|set).*");

    private static final DescribedPredicate<JavaCall<?>> CHANGE_FILES = new DescribedPredicate<>("change files") {
        @Override
        public boolean test(JavaCall<?> call) {
            String owner = call.getTargetOwner().getName();
            return (owner.equals("java.nio.file.Files")
                            && CHANGING.matcher(call.getName()).matches())
                    || (owner.equals("java.nio.channels.FileChannel")
                            && call.getName().equals("open"))
                    || List.of("java.io.FileOutputStream", "java.io.FileWriter", "java.io.RandomAccessFile")
                            .contains(owner);
        }
    };

    @ArchTest
    static final ArchRule FILES_ARE_WRITTEN_IN_ONE_PLACE = noClasses()
            .that()
            .resideOutsideOfPackage("freshfurrow.model.files")
            .should()
            .callCodeUnitWhere(CHANGE_FILES);
}
