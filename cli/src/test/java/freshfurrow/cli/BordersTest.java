package freshfurrow.cli;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import freshfurrow.model.audit.Audit;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.timeline.GoneWithout;
import freshfurrow.model.timeline.OneLoad;
import freshfurrow.model.timeline.WetGround;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.Progress;
import freshfurrow.solver.lived.SpringProgress;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.stop.StopSignal;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The borders of the solver, of the application layer and of the command line; those of the model are held beside it. */
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
                    "freshfurrow.cli..",
                    "freshfurrow.app..",
                    "freshfurrow.model.read..",
                    "picocli..",
                    "java.nio.file..",
                    "com.fasterxml..");

    @ArchTest
    static final ArchRule THE_COMMAND_LINE_LEAVES_THE_SEARCH_TO_THE_SOLVER = noClasses()
            .that()
            .resideInAnyPackage("freshfurrow.cli..", "freshfurrow.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("ai.timefold..");

    /** A command line or a page in a browser asks it; it has no words for either. */
    @ArchTest
    static final ArchRule THE_APPLICATION_KNOWS_NO_DOOR = noClasses()
            .that()
            .resideInAPackage("freshfurrow.app..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "freshfurrow.cli",
                    "freshfurrow.cli.command..",
                    "freshfurrow.cli.words..",
                    "freshfurrow.cli.text..",
                    "freshfurrow.cli.why..",
                    "freshfurrow.cli.card..",
                    "freshfurrow.cli.needs..",
                    "freshfurrow.desk..",
                    "picocli..",
                    "io.javalin..",
                    "java.net.http..")
            .orShould(ACCESS_STANDARD_STREAMS);

    /** It asks the application layer, as commands do, and has its own words only where an option would help a command. */
    @ArchTest
    static final ArchRule THE_DESK_LEAVES_FILES_AND_SEARCH_TO_OTHERS = noClasses()
            .that()
            .resideInAPackage("freshfurrow.desk..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                            "freshfurrow.cli.command..",
                            "freshfurrow.model.files..",
                            "freshfurrow.model.audit..",
                            "freshfurrow.model.timeline..",
                            "ai.timefold..",
                            "picocli..")
                    .and(not(in(Obstacle.class)))
                    .or(resideInAPackage("freshfurrow.solver..")
                            .and(not(in(PlanningOptions.class, Progress.class, StopSignal.class)))));

    @ArchTest
    static final ArchRule ONLY_THE_DESK_KNOWS_A_SERVER = noClasses()
            .that()
            .resideOutsideOfPackage("freshfurrow.desk..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..");

    /** A service that is asked for by its interface, so that it is loaded only where a season has a map. */
    @ArchTest
    static final ArchRule ONLY_ROADS_KNOW_HOW_WAYS_ARE_FOUND = noClasses()
            .that()
            .resideOutsideOfPackage("freshfurrow.roads..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "freshfurrow.roads..", "com.graphhopper..", "com.carrotsearch..", "com.google.protobuf..");

    @ArchTest
    static final ArchRule ROADS_KNOW_MAPS_AND_PLACES_ONLY = noClasses()
            .that()
            .resideInAPackage("freshfurrow.roads..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "freshfurrow.cli..",
                    "freshfurrow.app..",
                    "freshfurrow.desk..",
                    "freshfurrow.solver..",
                    "freshfurrow.model.read..");

    /** They are written by the application layer, so that to know it would be a circle. */
    @ArchTest
    static final ArchRule WHAT_IS_MADE_OF_PLANS_KNOWS_NO_APPLICATION = noClasses()
            .that()
            .resideInAnyPackage(
                    "freshfurrow.cli.page..",
                    "freshfurrow.cli.sheets..",
                    "freshfurrow.cli.export..",
                    "freshfurrow.cli.compare..",
                    "freshfurrow.cli.changes..",
                    "freshfurrow.cli.text..",
                    "freshfurrow.cli.day..",
                    "freshfurrow.cli.safety..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("freshfurrow.app..");

    /** Of the timeline, commands and pages see records of what it says; whatever has to be played out, the application layer does. */
    @ArchTest
    static final ArchRule COMMANDS_AND_PAGES_PLAY_NO_SEASON_OUT = noClasses()
            .that()
            .resideInAPackage("freshfurrow.cli..")
            .should()
            .dependOnClassesThat(resideInAPackage("freshfurrow.model.timeline..")
                    .and(not(in(WetGround.class, OneLoad.class, GoneWithout.class))));

    /** Of the solver, commands see what they pass to the application layer and hear from it; answers, the records they put in words. */
    @ArchTest
    static final ArchRule COMMANDS_AND_PAGES_SEARCH_FOR_NO_PLAN = noClasses()
            .that()
            .resideInAPackage("freshfurrow.cli..")
            .should()
            .dependOnClassesThat(resideInAPackage("freshfurrow.solver..")
                    .and(not(resideInAPackage("freshfurrow.solver.why..")))
                    .and(not(in(
                            PlanningOptions.class,
                            Progress.class,
                            SpringProgress.class,
                            StopSignal.class,
                            FieldLists.class))));

    /** They parse, ask the application layer, and print; of files they only say what was in the way. */
    @ArchTest
    static final ArchRule COMMANDS_READ_WRITE_AND_AUDIT_NOTHING = noClasses()
            .that()
            .resideInAnyPackage("freshfurrow.cli.command..", "freshfurrow.cli.words..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("freshfurrow.model.files..", "freshfurrow.model.write..")
                    .and(not(in(Obstacle.class)))
                    .or(in(Files.class, SeasonFiles.class, LogReader.class, PlanFile.class, Audit.class)));

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
            .resideInAnyPackage(
                    "freshfurrow.cli.command..",
                    "freshfurrow.cli.words..",
                    "freshfurrow.solver..",
                    "picocli..",
                    "java.nio.file..");

    @ArchTest
    static final ArchRule ANSWERS_KNOW_NO_COMMANDS_AND_NO_FILES = noClasses()
            .that()
            .resideInAPackage("freshfurrow.cli.why..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("freshfurrow.cli.command..", "picocli..", "java.nio.file..");

    private static DescribedPredicate<JavaClass> in(Class<?>... classes) {
        return new DescribedPredicate<>("are among " + List.of(classes)) {
            @Override
            public boolean test(JavaClass javaClass) {
                return Stream.of(classes)
                        .map(Class::getName)
                        .anyMatch(name -> javaClass.getName().equals(name)
                                || javaClass.getName().startsWith(name + "$"));
            }
        };
    }

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
