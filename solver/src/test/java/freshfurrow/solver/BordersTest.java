package freshfurrow.solver;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The borders of the solver and between its rooms. */
@AnalyzeClasses(packages = "freshfurrow.solver", importOptions = DoNotIncludeTests.class)
class BordersTest {
    @ArchTest
    static final ArchRule THE_SOLVER_KNOWS_NO_FILES_NO_SCREENS_AND_NO_AUDIT = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "freshfurrow.cli..",
                    "freshfurrow.model.read..",
                    "freshfurrow.model.audit..",
                    "java.io..",
                    "java.nio.file..");

    @ArchTest
    static final ArchRule THE_TIMELINE_IS_ENTERED_BY_ITS_DOOR =
            noClasses().should().dependOnClassesThat().resideInAPackage("freshfurrow.model.timeline.*..");

    @ArchTest
    static final ArchRule ESTIMATES_ARE_FREE_OF_THE_SOLVER_LIBRARY = noClasses()
            .that()
            .resideInAPackage("freshfurrow.solver.estimate")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("ai.timefold..");

    @ArchTest
    static final ArchRule ONE_FILE_USES_THE_INSIDE_OF_THE_SOLVER_LIBRARY = noClasses()
            .that()
            .haveNameNotMatching(".*\\.LibrarySearch(\\$.*)?")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("ai.timefold.solver.core.impl..");

    @ArchTest
    static final ArchRule ROOMS_DO_NOT_DEPEND_ON_ONE_ANOTHER_IN_CIRCLES =
            slices().matching("freshfurrow.solver.(*)..").should().beFreeOfCycles();
}
