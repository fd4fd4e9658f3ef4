package org.limedry;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasModifiers.Predicates.modifier;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;

/** The floors of the library and what it must never reach for. */
@AnalyzeClasses(packages = "org.limedry", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
    /** From the ground up: each may use only those before it. */
    private static final List<String> FLOORS = List.of(
            "units", "numerics", "air", "material", "lime", "wall", "climate", "room", "simulation", "study", "proof");

    /** The packages of this module; reference-data is a module of its own, below all of them. */
    private static final String[] OURS = packagesOf(FLOORS);

    @ArchTest
    static void eachFloor_usesOnlyThoseBelow(JavaClasses library) {
        for (int floor = 0; floor < FLOORS.size() - 1; floor++) {
            noClasses()
                    .that()
                    .resideInAnyPackage(packagesOf(FLOORS.subList(floor, floor + 1)))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(packagesOf(FLOORS.subList(floor + 1, FLOORS.size())))
                    .allowEmptyShould(true)
                    .check(library);
        }
    }

    @ArchTest
    static final ArchRule EVERY_CLASS_LIVES_ON_A_FLOOR = classes()
            .that()
            .resideOutsideOfPackage("org.limedry.reference..")
            .should()
            .resideInAnyPackage(OURS);

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("org.limedry.(**)").should().beFreeOfCycles();

    /** A question is answered from what {@code study} itself holds for all of them, never from another's answer. */
    @ArchTest
    static final ArchRule NO_QUESTION_USES_ANOTHER =
            slices().matching("org.limedry.study.(*)..").should().notDependOnEachOther();

    @ArchTest
    static final ArchRule WHAT_QUESTIONS_SHARE_KNOWS_NONE_OF_THEM = noClasses()
            .that()
            .resideInAPackage("org.limedry.study")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.limedry.study.*..");

    @ArchTest
    static final ArchRule NO_FILES = noClasses()
            .that()
            .resideInAnyPackage(OURS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels..", "java.net..");

    @ArchTest
    static final ArchRule NO_PRINTING = noClasses()
            .that()
            .resideInAnyPackage(OURS)
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("java.util.logging..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(System.Logger.class);

    @ArchTest
    static final ArchRule NO_LIBRARY_BUT_THE_NAMED = classes()
            .that()
            .resideInAnyPackage(OURS)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", "org.limedry..", "org.apache.commons.math3..", "org.jspecify.annotations..");

    @ArchTest
    static final ArchRule NO_CLOCK =
            noClasses().that().resideInAnyPackage(OURS).should().callMethodWhere(readsAClock());

    @ArchTest
    static final ArchRule NO_MUTABLE_STATIC_FIELD = fields().that()
            .areDeclaredInClassesThat(resideInAnyPackage(OURS))
            .and()
            .areStatic()
            .and(not(modifier(JavaModifier.SYNTHETIC)))
            .should()
            .beFinal();

    @ArchTest
    static final ArchRule NO_ARRAY_IS_SHARED = fields().that()
            .areDeclaredInClassesThat(resideInAnyPackage(OURS))
            .and()
            .haveRawType(DescribedPredicate.describe("an array", JavaClass::isArray))
            .and(not(modifier(JavaModifier.SYNTHETIC)))
            .should()
            .notBePublic()
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule CLASSES_ARE_CLOSED = classes()
            .that()
            .resideInAnyPackage(OURS)
            .and()
            .areNotInterfaces()
            .and()
            .areNotEnums()
            .and()
            .areNotAnonymousClasses()
            .and(not(modifier(JavaModifier.ABSTRACT)))
            .and(not(modifier(JavaModifier.SYNTHETIC)))
            .and(not(DescribedPredicate.describe("sealed", ArchitectureTest::isSealed)))
            .should()
            .haveModifier(JavaModifier.FINAL);

    private static DescribedPredicate<JavaCall<?>> readsAClock() {
        return DescribedPredicate.describe("reads a clock", call -> {
            String owner = call.getTargetOwner().getFullName();
            String method = call.getName();
            boolean now = owner.startsWith("java.time.") && (method.equals("now") || method.startsWith("system"));
            boolean timer = owner.equals("java.lang.System")
                    && (method.equals("currentTimeMillis") || method.equals("nanoTime"));
            return now || timer;
        });
    }

    private static boolean isSealed(JavaClass type) {
        return type.reflect().isSealed();
    }

    private static String[] packagesOf(List<String> names) {
        return names.stream().map(name -> "org.limedry." + name + "..").toArray(String[]::new);
    }
}
