package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.limedry.Refusal;
import org.limedry.material.Material;

/** What cannot be a mix, a coat or a rule is refused where it is made, each argument by its name. */
final class LimeArgumentsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final CoatMortar MORTAR =
            Mixes.mortars().mortar(Mixes.plain(LimeKind.PUTTY, 1.0, 2.5), MortarChoice.likely());
    private static final Material MATERIAL = MORTAR.material();
    private static final Laying LAYING = new Laying.On(Instant.parse("2026-11-02T08:00:00Z"));

    @Test
    void mortar_refusesEachArgument() {
        Refusal.of("name", () -> new CoatMortar(" ", MATERIAL, 300.0, 200.0, 5.0, 30e3, false, 4e-6));
        Refusal.of("freeWaterKgPerM3", () -> new CoatMortar("m", MATERIAL, 0.0, 200.0, 5.0, 30e3, false, 4e-6));
        Refusal.of("calciumHydroxideKgPerM3", () -> new CoatMortar("m", MATERIAL, 300.0, -1.0, 5.0, 30e3, false, 4e-6));
        Refusal.of(
                "boundWaterKgPerM3", () -> new CoatMortar("m", MATERIAL, 300.0, 200.0, Double.NaN, 30e3, false, 4e-6));
        Refusal.of(
                "settingActivationJPerMol", () -> new CoatMortar("m", MATERIAL, 300.0, 200.0, 5.0, 0.0, false, 4e-6));
        Refusal.of("carbonationMPerSqrtS", () -> new CoatMortar("m", MATERIAL, 300.0, 200.0, 5.0, 30e3, false, -4e-6));
    }

    @Test
    void coat_refusesEachArgument() {
        Refusal.of("wall", () -> new CoatPlan("", 2, MORTAR, 0.011, 8.0, 0.3, LAYING));
        Refusal.of("number", () -> new CoatPlan("north", 0, MORTAR, 0.011, 8.0, 0.3, LAYING));
        Refusal.of("thicknessM", () -> new CoatPlan("north", 2, MORTAR, 0.0, 8.0, 0.3, LAYING));
        Refusal.of("laidCelsius", () -> new CoatPlan("north", 2, MORTAR, 0.011, Double.NaN, 0.3, LAYING));
        Refusal.of("prewettingKgPerM2", () -> new CoatPlan("north", 2, MORTAR, 0.011, 8.0, -0.3, LAYING));
        Refusal.of("workingDays", () -> new Laying.WhenReady(ZoneOffset.UTC, Set.of(), LocalTime.of(8, 0), 5.0));
        Refusal.of("wall", () -> new HandTest(" ", 2, Instant.EPOCH, HandTest.Result.HARD));
    }

    // EXACT: a day on which nobody works is no reason to refuse the others.
    @Test
    void layingWhenReady_onOneDayOfTheWeek_isTaken() {
        Laying.WhenReady friday =
                new Laying.WhenReady(ZoneOffset.UTC, Set.of(DayOfWeek.FRIDAY), LocalTime.of(8, 0), 5.0);

        assertEquals(Set.of(DayOfWeek.FRIDAY), friday.workingDays());
    }

    // EXACT: Friday 6 November 2026, 8 o'clock in Dublin is 8 o'clock UTC, and an hour more in summer.
    @Test
    void layingWhenReady_onlyOnTheMorningOfAWorkingDay() {
        Laying.WhenReady friday =
                new Laying.WhenReady(ZoneId.of("Europe/Dublin"), Set.of(DayOfWeek.FRIDAY), LocalTime.of(8, 0), 5.0);

        assertTrue(friday.isMorning(Instant.parse("2026-11-06T08:00:00Z")));
        assertTrue(friday.isMorning(Instant.parse("2026-07-03T07:00:00Z")));
        assertFalse(friday.isMorning(Instant.parse("2026-11-06T09:00:00Z")));
        assertFalse(friday.isMorning(Instant.parse("2026-11-05T08:00:00Z")));
    }

    @Test
    void gangs_refuseEachArgument() {
        Laying.WhenReady friday =
                new Laying.WhenReady(ZoneOffset.UTC, Set.of(DayOfWeek.FRIDAY), LocalTime.of(8, 0), 5.0);
        Refusal.of("gangs", () -> new Laying.ByGang(friday, Instant.EPOCH, List.of()));
        Refusal.of("name", () -> new Laying.Gang(" ", 1.5));
        Refusal.of("days", () -> new Laying.Gang("gang", 0.0));
    }

    @Test
    void figures_refuseEachArgument() {
        FreshWater asItComes = new FreshWater.AsItComes();
        Refusal.of("limeBulkKgPerM3", () -> new MixFigures(0.0, 0.9, 1500.0, 0.05, 0.03, asItComes));
        Refusal.of("purity", () -> new MixFigures(600.0, 1.01, 1500.0, 0.05, 0.03, asItComes));
        Refusal.of("sandBulkKgPerM3", () -> new MixFigures(600.0, 0.9, Double.NaN, 0.05, 0.03, asItComes));
        Refusal.of("sandMoisture", () -> new MixFigures(600.0, 0.9, 1500.0, -0.05, 0.03, asItComes));
        Refusal.of("airFraction", () -> new MixFigures(600.0, 0.9, 1500.0, 0.05, 0.31, asItComes));
        Refusal.of("steamPerQuicklime", () -> new FreshWater.Measured(0.8, -0.1));
        Refusal.of("coefficientMPerSqrtS", () -> Carbonation.squaredDepthRateM2PerS(-4e-6, 420.0, 0.5, 0.7, 9.0));
        Refusal.of("hydroxideKgPerM3", () -> Carbonation.carbonatedKgPerM2(-200.0, 0.001));
    }

    // EXACT: a rule needs a limit, and any one of the four will do.
    @Test
    void rule_withoutALimit_isRefused_andWithAnyOneIsNot() {
        OptionalDouble some = OptionalDouble.of(0.7);
        Refusal.of("name", () -> new ReadinessRule(" ", some, NONE, NONE, NONE));
        Refusal.of("rule", () -> new ReadinessRule("none", NONE, NONE, NONE, NONE));
        CoatState state = new CoatState(0.8, 0.8, 0.6, 0.8);
        assertTrue(new ReadinessRule("suction", some, NONE, NONE, NONE).isMetBy(state));
        assertTrue(new ReadinessRule("age", NONE, some, NONE, NONE).isMetBy(state));
        assertTrue(new ReadinessRule("face", NONE, NONE, some, NONE).isMetBy(state));
        assertTrue(new ReadinessRule("days", NONE, NONE, NONE, some).isMetBy(state));
    }

    // PRACTICE: the words of the trade: a finger that dents it says no, the other two say yes.
    @Test
    void handTest_passesUnlessAFingerDentsIt() {
        assertFalse(HandTest.Result.DENTS.passes());
        assertTrue(HandTest.Result.NAIL_NOT_KNUCKLE.passes());
        assertTrue(HandTest.Result.HARD.passes());
    }
}
