package freshfurrow.model;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;

/** The borders between the rooms of the model. */
@AnalyzeClasses(packages = "freshfurrow.model", importOptions = DoNotIncludeTests.class)
class BordersTest {
    @ArchTest
    static final ArchRule THE_AUDIT_READS_SEASONS_AND_PLANS_AND_NOTHING_ELSE_OF_OURS = classes()
            .that()
            .resideInAPackage("freshfurrow.model.audit")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "freshfurrow.model.audit",
                    "freshfurrow.model.season",
                    "freshfurrow.model.plan",
                    "freshfurrow.model.travel",
                    "freshfurrow.model.quantity",
                    "java..",
                    "org.jspecify..");

    @ArchTest
    static final ArchRule THE_MODEL_KNOWS_NO_SOLVER_AND_NO_COMMAND_LINE = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("ai.timefold..", "picocli..", "freshfurrow.solver..", "freshfurrow.cli..");

    @ArchTest
    static final ArchRule SEASONS_KNOW_NOTHING_OF_HOW_THEY_ARE_READ_OR_PLAYED_OUT = noClasses()
            .that()
            .resideInAnyPackage("freshfurrow.model.season", "freshfurrow.model.quantity")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "freshfurrow.model.read",
                    "freshfurrow.model.timeline",
                    "freshfurrow.model.plan",
                    "freshfurrow.model.audit");

    @ArchTest
    static final ArchRule WHAT_WAS_DONE_IS_KNOWN_WITHOUT_FILES_PLANS_AND_THE_TIMELINE = noClasses()
            .that()
            .resideInAPackage("freshfurrow.model.log")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "freshfurrow.model.read",
                    "freshfurrow.model.write",
                    "freshfurrow.model.plan",
                    "freshfurrow.model.timeline",
                    "java.nio.file..");

    @ArchTest
    static final ArchRule ROOMS_DO_NOT_DEPEND_ON_ONE_ANOTHER_IN_CIRCLES =
            slices().matching("freshfurrow.model.(*)..").should().beFreeOfCycles();

    private static final String TIMELINE = "freshfurrow.model.timeline";

    @ArchTest
    static final ArchRule LAYERS_OF_THE_TIMELINE_DEPEND_ONLY_DOWNWARDS = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("calendar")
            .definedBy(TIMELINE + ".calendar")
            .layer("tables")
            .definedBy(TIMELINE + ".tables")
            .layer("actual")
            .definedBy(TIMELINE + ".actual")
            .layer("state")
            .definedBy(TIMELINE + ".state")
            .layer("planters")
            .definedBy(TIMELINE + ".planters")
            .layer("rigs")
            .definedBy(TIMELINE + ".rigs")
            .layer("mix")
            .definedBy(TIMELINE + ".mix")
            .layer("load")
            .definedBy(TIMELINE + ".load")
            .layer("journal")
            .definedBy(TIMELINE + ".journal")
            .layer("door")
            .definedBy(TIMELINE)
            .whereLayer("door")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("journal")
            .mayOnlyBeAccessedByLayers("door")
            .whereLayer("load")
            .mayOnlyBeAccessedByLayers("door")
            .whereLayer("mix")
            .mayOnlyBeAccessedByLayers("load", "door")
            .whereLayer("rigs")
            .mayOnlyBeAccessedByLayers("mix", "load", "door")
            .whereLayer("planters")
            .mayOnlyBeAccessedByLayers("rigs", "mix", "load", "door")
            .whereLayer("state")
            .mayOnlyBeAccessedByLayers("planters", "rigs", "mix", "load", "journal", "door")
            .whereLayer("actual")
            .mayOnlyAccessLayers("calendar", "tables")
            .whereLayer("calendar")
            .mayNotAccessAnyLayer()
            .whereLayer("tables")
            .mayOnlyAccessLayers("calendar");

    @ArchTest
    static final ArchRule THE_TIMELINE_IS_ENTERED_BY_ITS_DOOR = noClasses()
            .that()
            .resideOutsideOfPackage(TIMELINE + "..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(TIMELINE + ".*..");

    /** A class and what is nested in it are one. */
    private static final SliceAssignment BY_CLASS_OF_THE_TIMELINE = new SliceAssignment() {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass javaClass) {
            return javaClass.getPackageName().startsWith(TIMELINE)
                    ? SliceIdentifier.of(javaClass.getName().split("\\$", 2)[0])
                    : SliceIdentifier.ignore();
        }

        @Override
        public String getDescription() {
            return "classes of the timeline";
        }
    };

    @ArchTest
    static final ArchRule CLASSES_OF_THE_TIMELINE_DO_NOT_DEPEND_ON_ONE_ANOTHER_IN_CIRCLES =
            slices().assignedFrom(BY_CLASS_OF_THE_TIMELINE).should().beFreeOfCycles();
}
