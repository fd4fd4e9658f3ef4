package org.limedry.simulation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.lime.Carbonation;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.CoatState;
import org.limedry.lime.EquivalentAge;
import org.limedry.lime.HandTest;
import org.limedry.lime.HydraulicSet;
import org.limedry.lime.Laying;
import org.limedry.lime.ReadinessRule;
import org.limedry.units.Units;
import org.limedry.wall.WallColumn;

/** One coat through a run: its age, its set, its carbonation and whether it is ready. */
final class CoatCourse {
    private static final double START_DEPTH_M = 1.0e-6;

    private final CoatPlan plan;
    private final ReadinessRule rule;
    private final List<HandTest> tests;
    private final WallColumn column;
    private final int wall;
    private Optional<Instant> laid = Optional.empty();
    private Optional<Instant> ready = Optional.empty();
    private boolean byHand;
    private Optional<Instant> offered = Optional.empty();
    private Optional<Outcome.Work> work = Optional.empty();
    private double waterLaidKgPerM2;
    private double equivalentAgeDays;
    private double setAgeDays;
    private double lostByFaceKgPerM2;
    private OptionalDouble drawnInFirstHour = OptionalDouble.empty();
    private double squaredDepthM2 = START_DEPTH_M * START_DEPTH_M;

    CoatCourse(CoatPlan plan, ReadinessRule rule, List<HandTest> tests, WallColumn column, int wall) {
        this.plan = plan;
        this.rule = rule;
        this.tests = tests;
        this.column = column;
        this.wall = wall;
    }

    CoatPlan plan() {
        return plan;
    }

    WallColumn column() {
        return column;
    }

    int wall() {
        return wall;
    }

    boolean isLaid() {
        return laid.isPresent();
    }

    boolean isReady() {
        return ready.isPresent();
    }

    Optional<Instant> ready() {
        return ready;
    }

    double waterLaidKgPerM2() {
        return waterLaidKgPerM2;
    }

    double equivalentAgeDays() {
        return equivalentAgeDays;
    }

    /** Returns the share of its water that left it in its first hour otherwise than by its face, once that hour is over. */
    OptionalDouble drawnInFirstHour() {
        return drawnInFirstHour;
    }

    /** Tells whether it is laid and no other coat covers it. */
    boolean isOutermost() {
        return isLaid() && column.coats() == plan.number();
    }

    double carbonatedM() {
        return isLaid() ? Math.sqrt(squaredDepthM2) : 0.0;
    }

    /** Takes note that a gang could begin it now. */
    void offer(Instant now) {
        offered = offered.or(() -> Optional.of(now));
    }

    /** Takes note that a gang begins it now. */
    void begin(Laying.Gang gang, Instant now) {
        work = Optional.of(new Outcome.Work(gang.name(), offered.orElse(now), now, gang.days()));
    }

    /** Returns the work of the gang that has begun it. */
    Optional<Outcome.Work> work() {
        return work;
    }

    void lay(Instant now) {
        double suctionPa = plan.mortar().laidSuctionPa();
        waterLaidKgPerM2 = column.lay(plan.mortar().material(), plan.thicknessM(), suctionPa, plan.laidCelsius());
        laid = Optional.of(now);
    }

    double ageDays(Instant now) {
        return laid.map(since ->
                        Units.daysFromSeconds(Duration.between(since, now).toMillis() / 1000.0))
                .orElse(0.0);
    }

    CoatState state(Instant now) {
        return new CoatState(
                column.coatMeanSuctionPa(plan.number()),
                equivalentAgeDays,
                column.innerRelativeHumidity(),
                ageDays(now));
    }

    /** Grows older by a step that has been taken. */
    void age(Instant now, double stepS) {
        if (drawnInFirstHour.isEmpty()) {
            lostByFaceKgPerM2 -= isOutermost() ? column.step().inner().stepVapourKgPerM2() : 0.0;
            if (ageDays(now) * Units.SECONDS_PER_DAY >= Units.SECONDS_PER_HOUR) {
                double gone = waterLaidKgPerM2 - column.coatWaterKgPerM2(plan.number()) - lostByFaceKgPerM2;
                drawnInFirstHour = OptionalDouble.of(Math.min(1.0, Math.max(0.0, gone / waterLaidKgPerM2)));
            }
        }
        double days = Units.daysFromSeconds(stepS);
        equivalentAgeDays += days * rate(ReadinessRule.AGE_ACTIVATION_J_PER_MOL);
        setAgeDays += days * rate(plan.mortar().settingActivationJPerMol());
    }

    /** Returns the water that set will bind over the next step, kg/m2. */
    double boundKgPerM2(double stepS) {
        CoatMortar mortar = plan.mortar();
        double until = setAgeDays + rate(mortar.settingActivationJPerMol()) * Units.daysFromSeconds(stepS);
        return plan.thicknessM() * HydraulicSet.boundKgPerM3(mortar.boundWaterKgPerM3(), setAgeDays, until);
    }

    private double rate(double activationJPerMol) {
        return EquivalentAge.rate(column.coatMeanCelsius(plan.number()), activationJPerMol);
    }

    /** Returns the hydroxide that turns to carbonate over a step in air of a given carbon dioxide, kg/m2. */
    double carbonatingKgPerM2(double carbonDioxidePpm, double stepS) {
        if (!isOutermost()) {
            return 0.0;
        }
        double advance = Math.sqrt(squaredDepthAfter(carbonDioxidePpm, stepS)) - Math.sqrt(squaredDepthM2);
        return Carbonation.carbonatedKgPerM2(plan.mortar().calciumHydroxideKgPerM3(), advance);
    }

    /** Takes the carbonation of a step that has been taken. */
    void carbonate(double carbonDioxidePpm, double stepS) {
        if (isOutermost()) {
            squaredDepthM2 = squaredDepthAfter(carbonDioxidePpm, stepS);
        }
    }

    /** Returns the node at which carbonation sets water free. */
    int frontNode() {
        return column.nodeInCoat(plan.number(), Math.sqrt(squaredDepthM2));
    }

    /** Judges the coat by the plasterer's tests, else by the rule. */
    void judge(Instant now) {
        if (!isLaid() || isReady()) {
            return;
        }
        Optional<Instant> pass = firstPass();
        if (pass.isPresent()) {
            if (!now.isBefore(pass.get())) {
                ready = pass;
                byHand = true;
            }
        } else if (tests.stream().noneMatch(test -> !test.instant().isBefore(now)) && rule.isMetBy(state(now))) {
            ready = Optional.of(now);
        }
    }

    Outcome.CoatResult result() {
        double left = isLaid() ? column.coatWaterKgPerM2(plan.number()) : 0.0;
        return new Outcome.CoatResult(
                plan.wall(), plan.number(), laid, ready, byHand, work, waterLaidKgPerM2, left, carbonatedM());
    }

    private Optional<Instant> firstPass() {
        return tests.stream()
                .filter(test -> test.result().passes())
                .map(HandTest::instant)
                .min(Instant::compareTo);
    }

    private double squaredDepthAfter(double carbonDioxidePpm, double stepS) {
        int node = frontNode();
        double rate = Carbonation.squaredDepthRateM2PerS(
                plan.mortar().carbonationMPerSqrtS(),
                carbonDioxidePpm,
                column.saturation(node),
                column.relativeHumidity(node),
                column.celsius(node));
        double full = plan.thicknessM() * plan.thicknessM();
        return Math.min(full, squaredDepthM2 + rate * stepS);
    }
}
