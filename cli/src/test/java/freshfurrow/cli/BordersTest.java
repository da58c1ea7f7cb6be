package freshfurrow.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The borders between the modules: cli reads solver and model, solver reads model, model reads neither. */
@AnalyzeClasses(packages = "freshfurrow", importOptions = DoNotIncludeTests.class)
class BordersTest {
    @ArchTest
    static final ArchRule THE_MODEL_KNOWS_NO_SOLVER_AND_NO_COMMAND_LINE = noClasses()
            .that()
            .resideInAPackage("freshfurrow.model..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("freshfurrow.solver..", "freshfurrow.cli..", "ai.timefold..", "picocli..");

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
}
