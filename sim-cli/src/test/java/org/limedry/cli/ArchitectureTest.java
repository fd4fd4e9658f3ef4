package org.limedry.cli;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.Set;
import picocli.CommandLine.Command;

/** The floors of the command. */
@AnalyzeClasses(packages = "org.limedry.cli", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
    private static final String CLI = "org.limedry.cli.";

    /** One room for each command: the command itself, its runs, its findings, its words and its files. */
    private static final Set<String> ROOMS = Set.of(
            "air",
            "airing",
            "delay",
            "diary",
            "doors",
            "fit",
            "handover",
            "loggers",
            "odds",
            "options",
            "programme",
            "report",
            "schema",
            "seasons",
            "starter",
            "verify",
            "wallcase");

    @ArchTest
    static final ArchRule EACH_FLOOR_USES_ONLY_THOSE_BELOW = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("org.limedry.cli..")
            .withOptionalLayers(true)
            .layer("entry")
            .definedBy("org.limedry.cli")
            .layer("rooms")
            .definedBy(ROOMS.stream().map(room -> CLI + room + "..").toArray(String[]::new))
            .layer("job")
            .definedBy("org.limedry.cli.job..")
            .layer("issue")
            .definedBy("org.limedry.cli.issue..")
            .layer("ask")
            .definedBy("org.limedry.cli.ask..")
            .layer("page")
            .definedBy("org.limedry.cli.page..")
            .layer("safety")
            .definedBy("org.limedry.cli.safety..")
            .layer("chart")
            .definedBy("org.limedry.cli.chart..")
            .layer("site")
            .definedBy("org.limedry.cli.site..")
            .layer("readings")
            .definedBy("org.limedry.cli.readings..")
            .layer("problem")
            .definedBy("org.limedry.cli.problem..")
            .whereLayer("entry")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("rooms")
            .mayOnlyBeAccessedByLayers("entry")
            .whereLayer("job")
            .mayOnlyBeAccessedByLayers("rooms")
            .whereLayer("issue")
            .mayOnlyBeAccessedByLayers("rooms")
            .whereLayer("ask")
            .mayOnlyBeAccessedByLayers("entry", "rooms")
            .whereLayer("page")
            .mayOnlyBeAccessedByLayers("rooms", "job", "issue", "ask")
            .whereLayer("safety")
            .mayOnlyBeAccessedByLayers("rooms", "job", "page")
            .whereLayer("chart")
            .mayOnlyBeAccessedByLayers("rooms", "job", "page")
            .whereLayer("site")
            .mayOnlyBeAccessedByLayers("rooms", "job", "issue", "ask", "page", "safety", "chart")
            .whereLayer("readings")
            .mayOnlyBeAccessedByLayers("rooms", "page", "chart", "site")
            .ensureAllClassesAreContainedInArchitecture();

    /** The one exception is {@code schema}: it prints the form of the wall case file, which its own room reads. */
    @ArchTest
    static final ArchRule NO_ROOM_USES_ANOTHER = slices().assignedFrom(new ByRoom())
            .should()
            .notDependOnEachOther()
            .ignoreDependency(resideInAPackage("org.limedry.cli.schema"), resideInAPackage("org.limedry.cli.wallcase"));

    @ArchTest
    static final ArchRule EVERY_COMMAND_STANDS_IN_A_ROOM = classes()
            .that()
            .areAnnotatedWith(Command.class)
            .and()
            .doNotHaveSimpleName("RootCommand")
            .should()
            .resideInAnyPackage(ROOMS.stream().map(room -> CLI + room).toArray(String[]::new));

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("org.limedry.cli.(*)..").should().beFreeOfCycles();

    private static final class ByRoom implements SliceAssignment {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            String name = type.getPackageName();
            if (!name.startsWith(CLI)) {
                return SliceIdentifier.ignore();
            }
            String room = name.substring(CLI.length()).replaceFirst("\\..*", "");
            return ROOMS.contains(room) ? SliceIdentifier.of(room) : SliceIdentifier.ignore();
        }

        @Override
        public String getDescription() {
            return "rooms";
        }
    }
}
