package org.limedry.units;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CheckTest {
    private static final String LENGTH = "thicknessM";

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void everyCheckOfANumber_refusesNaNAndInfinity(double value) {
        assertRefused(() -> Check.finite(value, LENGTH, "m"));
        assertRefused(() -> Check.positive(value, LENGTH, "m"));
        assertRefused(() -> Check.nonNegative(value, LENGTH, "m"));
        assertRefused(() -> Check.atLeast(value, -3.0, LENGTH, "m"));
        assertRefused(() -> Check.inClosed(value, -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inOpen(value, -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inOpenClosed(value, -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inClosedOpen(value, -3.0, 7.0, LENGTH, "m"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-Double.MAX_VALUE, -2.5, 0.0, Double.MAX_VALUE})
    void finite_ofAnyOtherNumber_passes(double value) {
        assertPasses(() -> Check.finite(value, LENGTH, "m"));
    }

    @Test
    void positive_atAndAroundZero_refusesZeroAndBelow() {
        assertPasses(() -> Check.positive(Double.MIN_VALUE, LENGTH, "m"));
        assertRefused(() -> Check.positive(0.0, LENGTH, "m"));
        assertRefused(() -> Check.positive(-0.0, LENGTH, "m"));
        assertRefused(() -> Check.positive(-Double.MIN_VALUE, LENGTH, "m"));
    }

    @Test
    void nonNegative_atAndAroundZero_refusesBelowZero() {
        assertPasses(() -> Check.nonNegative(0.0, LENGTH, "m"));
        assertRefused(() -> Check.nonNegative(-Double.MIN_VALUE, LENGTH, "m"));
    }

    @Test
    void atLeast_atAndBelowTheBound_refusesBelow() {
        assertPasses(() -> Check.atLeast(2.5, 2.5, LENGTH, "m"));
        assertRefused(() -> Check.atLeast(Math.nextDown(2.5), 2.5, LENGTH, "m"));
        assertPasses(() -> Check.atLeast(3, 3, "cells"));
        assertRefused(() -> Check.atLeast(2, 3, "cells"));
    }

    @Test
    void inClosed_atBothEndsAndJustOutside_allowsTheEnds() {
        assertPasses(() -> Check.inClosed(-3.0, -3.0, 7.0, LENGTH, "m"));
        assertPasses(() -> Check.inClosed(7.0, -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inClosed(Math.nextDown(-3.0), -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inClosed(Math.nextUp(7.0), -3.0, 7.0, LENGTH, "m"));
    }

    @Test
    void inOpen_atBothEndsAndJustInside_refusesTheEnds() {
        assertPasses(() -> Check.inOpen(Math.nextUp(-3.0), -3.0, 7.0, LENGTH, "m"));
        assertPasses(() -> Check.inOpen(Math.nextDown(7.0), -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inOpen(-3.0, -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inOpen(7.0, -3.0, 7.0, LENGTH, "m"));
    }

    @Test
    void inOpenClosed_atBothEndsAndJustOutside_allowsOnlyTheUpper() {
        assertPasses(() -> Check.inOpenClosed(Math.nextUp(-3.0), -3.0, 7.0, LENGTH, "m"));
        assertPasses(() -> Check.inOpenClosed(7.0, -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inOpenClosed(-3.0, -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inOpenClosed(Math.nextUp(7.0), -3.0, 7.0, LENGTH, "m"));
    }

    @Test
    void inClosedOpen_atBothEndsAndJustOutside_allowsOnlyTheLower() {
        assertPasses(() -> Check.inClosedOpen(-3.0, -3.0, 7.0, LENGTH, "m"));
        assertPasses(() -> Check.inClosedOpen(Math.nextDown(7.0), -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inClosedOpen(Math.nextDown(-3.0), -3.0, 7.0, LENGTH, "m"));
        assertRefused(() -> Check.inClosedOpen(7.0, -3.0, 7.0, LENGTH, "m"));
    }

    @Test
    void notBlank_ofEmptyOrWhiteSpace_isRefused() {
        assertPasses(() -> Check.notBlank(" a ", "name"));
        assertRefused(() -> Check.notBlank("", "name"));
        assertRefused(() -> Check.notBlank(" \t\n", "name"));
    }

    @Test
    void notEmpty_ofNoElements_isRefused() {
        assertPasses(() -> Check.notEmpty(List.of("north"), "walls"));
        assertRefused(() -> Check.notEmpty(List.of(), "walls"));
    }

    // EXACT: the texts are the contract, `name: must be RULE UNIT, was VALUE`.
    @Test
    void message_ofEachCheck_namesArgumentRuleUnitAndValue() {
        assertMessage("thicknessM: must be a finite number m, was NaN", () -> Check.finite(Double.NaN, LENGTH, "m"));
        assertMessage("thicknessM: must be finite and above 0 m, was -1.5", () -> Check.positive(-1.5, LENGTH, "m"));
        assertMessage(
                "thicknessM: must be finite and at least 0 m, was -1.5", () -> Check.nonNegative(-1.5, LENGTH, "m"));
        assertMessage("cells: must be at least 3, was 2", () -> Check.atLeast(2, 3, "cells"));
        assertMessage(
                "thicknessM: must be in (0, 2.5] m, was 3.0", () -> Check.inOpenClosed(3.0, 0.0, 2.5, LENGTH, "m"));
        assertMessage(
                "tiltDegrees: must be in [0, 360) °, was 360.0",
                () -> Check.inClosedOpen(360.0, 0.0, 360.0, "tiltDegrees", "°"));
        assertMessage("porosity: must be in (0, 1), was 1.0", () -> Check.inOpen(1.0, 0.0, 1.0, "porosity", ""));
        assertMessage("name: must be a text that is not blank, was \" \"", () -> Check.notBlank(" ", "name"));
        assertMessage("walls: must be not empty, was empty", () -> Check.notEmpty(List.of(), "walls"));
        assertMessage(
                "end: must be after the start, was day 3", () -> Check.that(false, "end", "after the start", "day 3"));
    }

    // EXACT: a bound of a million and more is written as a number with its power of ten.
    @Test
    void message_ofALargeBound_keepsItReadable() {
        assertMessage("p: must be in [0, 999999] Pa, was -1.0", () -> Check.inClosed(-1.0, 0.0, 999_999.0, "p", "Pa"));
        assertMessage("p: must be in [0, 1000000.0] Pa, was -1.0", () -> Check.inClosed(-1.0, 0.0, 1e6, "p", "Pa"));
        assertMessage("p: must be in [-1.0E10, 0.5] Pa, was 1.0", () -> Check.inClosed(1.0, -1e10, 0.5, "p", "Pa"));
    }

    @Test
    void that_ofARuleThatHolds_passes() {
        assertPasses(() -> Check.that(true, "end", "after the start", "day 4"));
    }

    private static void assertPasses(Executable check) {
        assertDoesNotThrow(check);
    }

    private static void assertRefused(Executable check) {
        assertThrows(IllegalArgumentException.class, check);
    }

    private static void assertMessage(String expected, Executable check) {
        assertEquals(
                expected, assertThrows(IllegalArgumentException.class, check).getMessage());
    }
}
