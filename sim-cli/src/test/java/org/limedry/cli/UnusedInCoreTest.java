package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the core offers is used: every method and constructor of it that is not private can be reached from main code of the
 * command. A test is no user, and neither is code that is itself out of reach.
 *
 * <p>Where a call may land in any of several overriding methods, all count as reached. Constants are left out: the compiler
 * copies their values, so that their use cannot be seen.
 */
final class UnusedInCoreTest {
    private static final String STEP = "the books of a step, closed to rounding by a test";

    private static final String MORTAR = "held against printed tables of fresh mortars, and to one cubic metre";

    private static final String LAB = "order and limit cases of the solver are put together with it in tests";

    private static final String GAVE_UP = "where and how a run gave up, for whoever calls the library";

    private static final String AUDIT = "what the audit of a weather file counts, held against published years";

    private static final String FIT = "how a fit widened its errors and what hangs together, seen by its tests alone";

    /** Members out of reach that stay, each with the reason. */
    private static final Map<String, String> KEPT = Map.ofEntries(
            Map.entry("climate.WeatherQuality.doubtful()", AUDIT),
            Map.entry("climate.WeatherQuality.gaps()", AUDIT),
            Map.entry("climate.WeatherQuality.readings()", AUDIT),
            Map.entry("climate.WeatherSeries.windMPerS(Instant)", "the wind of a run at an instant, read by tests"),
            Map.entry("lime.CoatMortar.name()", "which mix a mortar was made of: trials on a site change it by name"),
            Map.entry("lime.MixMasses.airFraction()", MORTAR),
            Map.entry("lime.MixMasses.freshDensityKgPerM3()", MORTAR),
            Map.entry("lime.MixMasses.sandKgPerM3()", MORTAR),
            Map.entry("lime.MixMasses.slakingWaterKgPerM3()", MORTAR),
            Map.entry("proof.benchmarks.Lab.coat(CoatPlan)", LAB),
            Map.entry("proof.benchmarks.Lab.longestStep(double)", LAB),
            Map.entry("room.CarbonDioxide$Step.outKg()", STEP),
            Map.entry("room.CarbonDioxide$Step.takenUpKg()", STEP),
            Map.entry("room.CarbonDioxide$Step.toOtherRoomsKg()", STEP),
            Map.entry("simulation.Outcome$Ending$GaveUp.error()", GAVE_UP),
            Map.entry("simulation.Outcome$Ending$GaveUp.stepS()", GAVE_UP),
            Map.entry("study.fit.FitResult$Channel.errorFactor()", FIT),
            Map.entry("study.fit.FitResult$Channel.lagCorrelation()", FIT),
            Map.entry("study.fit.Fitted.root(int, int)", FIT));

    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.limedry");

    private static final Map<String, List<JavaCodeUnit>> CORE_BY_NAME = MAIN.stream()
            .filter(UnusedInCoreTest::isOfCore)
            .flatMap(type -> type.getCodeUnits().stream())
            .collect(Collectors.groupingBy(JavaCodeUnit::getName));

    @Test
    void core_inReachOfTheCommand_offersNothingThatIsNotUsed() {
        Set<JavaCodeUnit> reached = reachedFrom(UnusedInCoreTest::isOfCommand);

        Set<String> unused = offered()
                .filter(unit -> !reached.contains(unit))
                .map(UnusedInCoreTest::name)
                .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(new TreeSet<>(KEPT.keySet()), unused);
    }

    // The check sees what it claims to see: from the odds alone the question of the doors is out of reach.
    @Test
    void core_fromOneQuestion_doesNotReachAnother() {
        Set<JavaCodeUnit> reached = reachedFrom(type -> type.getPackageName().equals("org.limedry.cli.odds"));

        assertTrue(reached.stream().anyMatch(unit -> name(unit).startsWith("study.odds.Odds.of(")));
        assertTrue(reached.stream().noneMatch(unit -> name(unit).startsWith("study.doors.DoorPlan.find(")));
    }

    private static Set<JavaCodeUnit> reachedFrom(Predicate<JavaClass> roots) {
        Set<JavaCodeUnit> reached = new HashSet<>();
        Deque<JavaCodeUnit> next = new ArrayDeque<>();
        MAIN.stream().filter(roots).forEach(type -> next.addAll(type.getCodeUnits()));
        while (!next.isEmpty()) {
            JavaCodeUnit unit = next.pop();
            if (reached.add(unit)) {
                unit.getAccessesFromSelf().forEach(access -> next.addAll(targets(access)));
                next.addAll(withItsClass(unit.getOwner()));
            }
        }
        return reached;
    }

    private static List<JavaCodeUnit> targets(JavaAccess<?> access) {
        if (access instanceof JavaFieldAccess) {
            return access.getOrigin().isConstructor()
                            || !access.getTargetOwner().isRecord()
                    ? withItsClass(access.getTargetOwner())
                    : named(access.getName())
                            .filter(unit -> unit.getOwner().equals(access.getTargetOwner()))
                            .toList();
        }
        return named(access.getName()).filter(unit -> mayLandIn(access, unit)).toList();
    }

    private static boolean mayLandIn(JavaAccess<?> access, JavaCodeUnit unit) {
        JavaClass from = access.getTargetOwner();
        JavaClass to = unit.getOwner();
        int count = ((AccessTarget.CodeUnitAccessTarget) access.getTarget())
                .getRawParameterTypes()
                .size();
        boolean overridable = !unit.isConstructor() && !unit.getModifiers().contains(JavaModifier.STATIC);
        boolean related = from.equals(to)
                || (!unit.isConstructor() && from.isAssignableTo(to.getName()))
                || (overridable && to.isAssignableTo(from.getName()));
        boolean sameTypes = !from.equals(to)
                || ((AccessTarget.CodeUnitAccessTarget) access.getTarget())
                        .getRawParameterTypes()
                        .equals(unit.getRawParameterTypes());
        return related && sameTypes && unit.getRawParameterTypes().size() == count;
    }

    /** Returns what may run as soon as a class is in use: its initializer, and what answers to a type of the JDK. */
    private static List<JavaCodeUnit> withItsClass(JavaClass type) {
        return isOfCore(type)
                ? type.getCodeUnits().stream()
                        .filter(unit -> unit.getName().equals("<clinit>") || answersToTheJdk(unit))
                        .toList()
                : List.of();
    }

    private static boolean answersToTheJdk(JavaCodeUnit unit) {
        return unit instanceof JavaMethod
                && Stream.concat(
                                unit.getOwner().getAllRawSuperclasses().stream(),
                                unit.getOwner().getAllRawInterfaces().stream())
                        .filter(type -> !type.getPackageName().startsWith("org.limedry"))
                        .flatMap(type -> type.getMethods().stream())
                        .anyMatch(method -> method.getName().equals(unit.getName())
                                && method.getRawParameterTypes().size()
                                        == unit.getRawParameterTypes().size());
    }

    private static Stream<JavaCodeUnit> named(String name) {
        return CORE_BY_NAME.getOrDefault(name, List.of()).stream();
    }

    private static Stream<JavaCodeUnit> offered() {
        return CORE_BY_NAME.values().stream()
                .flatMap(List::stream)
                .filter(unit -> Set.of(JavaModifier.PRIVATE, JavaModifier.SYNTHETIC, JavaModifier.BRIDGE).stream()
                        .noneMatch(unit.getModifiers()::contains))
                .filter(unit -> !unit.getName().equals("<clinit>"))
                .filter(unit -> !unit.getOwner().isEnum()
                        || !Set.of("values", "valueOf").contains(unit.getName()));
    }

    private static boolean isOfCore(JavaClass type) {
        return !isOfCommand(type) && !(type.getPackageName() + ".").startsWith("org.limedry.reference.");
    }

    private static boolean isOfCommand(JavaClass type) {
        return (type.getPackageName() + ".").startsWith("org.limedry.cli.");
    }

    private static String name(JavaCodeUnit unit) {
        String parameters = unit.getRawParameterTypes().stream()
                .map(JavaClass::getSimpleName)
                .collect(Collectors.joining(", ", "(", ")"));
        return unit.getOwner().getName().replace("org.limedry.", "") + "." + unit.getName() + parameters;
    }
}
