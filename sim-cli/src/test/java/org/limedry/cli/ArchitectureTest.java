package org.limedry.cli;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The floors of the command. */
@AnalyzeClasses(packages = "org.limedry.cli", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
    /** One package for each question that a command asks of a site; none uses another. */
    private static final String[] QUESTIONS = {
        "org.limedry.cli.airing..",
        "org.limedry.cli.delay..",
        "org.limedry.cli.doors..",
        "org.limedry.cli.fit..",
        "org.limedry.cli.handover..",
        "org.limedry.cli.odds..",
        "org.limedry.cli.options..",
        "org.limedry.cli.programme..",
        "org.limedry.cli.seasons.."
    };

    @ArchTest
    static final ArchRule EACH_FLOOR_USES_ONLY_THOSE_BELOW = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("org.limedry.cli..")
            .withOptionalLayers(true)
            .layer("entry")
            .definedBy("org.limedry.cli")
            .layer("command")
            .definedBy("org.limedry.cli.command..")
            .layer("verify")
            .definedBy("org.limedry.cli.verify..")
            .layer("report")
            .definedBy("org.limedry.cli.report..")
            .layer("questions")
            .definedBy(QUESTIONS)
            .layer("page")
            .definedBy("org.limedry.cli.page..")
            .layer("care")
            .definedBy("org.limedry.cli.care..")
            .layer("chart")
            .definedBy("org.limedry.cli.chart..")
            .layer("site")
            .definedBy("org.limedry.cli.site..")
            .layer("wallcase")
            .definedBy("org.limedry.cli.wallcase..")
            .layer("readings")
            .definedBy("org.limedry.cli.readings..")
            .layer("problem")
            .definedBy("org.limedry.cli.problem..")
            .whereLayer("entry")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("command")
            .mayOnlyBeAccessedByLayers("entry")
            .whereLayer("verify")
            .mayOnlyBeAccessedByLayers("command")
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("command", "questions")
            .whereLayer("questions")
            .mayOnlyBeAccessedByLayers("command")
            .whereLayer("page")
            .mayOnlyBeAccessedByLayers("command", "verify", "questions", "report")
            .whereLayer("care")
            .mayOnlyBeAccessedByLayers("command", "questions", "report", "page")
            .whereLayer("chart")
            .mayOnlyBeAccessedByLayers("command", "verify", "questions", "report", "page")
            .whereLayer("site")
            .mayOnlyBeAccessedByLayers("command", "questions", "report", "page", "care", "chart", "wallcase")
            .whereLayer("wallcase")
            .mayOnlyBeAccessedByLayers("command")
            .whereLayer("readings")
            .mayOnlyBeAccessedByLayers("command", "verify", "questions", "report", "page", "chart", "site", "wallcase")
            .ensureAllClassesAreContainedInArchitecture();

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("org.limedry.cli.(*)..").should().beFreeOfCycles();
}
