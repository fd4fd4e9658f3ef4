package org.limedry.air;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.units.Check;

/**
 * The published formulas for the pressure of saturated water vapour. The name is the identifier of the formula in
 * {@code psychro/sat_formulas}, where its constants and their status are listed.
 *
 * <p>{@link #WMO8_MAGNUS} is the working formula; the others are there to compare with. Pure vapour: the enhancement in
 * moist air is {@link Enhancement}. Each phase is asked for by name and refused outside its range; where a source states
 * no range or no end of it, the range is marked "ours".
 */
// Each branch is a function without state and two numbers: immutable, which the checker cannot see.
@SuppressWarnings("ImmutableEnumChecker")
public enum SaturationFormula {
    /** WMO-No. 8 annex 4.B eq. 4.B.1 and 4.B.2. Accuracy: within 0.32 % of IAPWS from -20 to 50 °C (computed). */
    WMO8_MAGNUS(
            "WMO-No. 8, annex 4.B, eq. 4.B.1 and 4.B.2 (second-hand)",
            SaturationBranch.of(MagnusForm.WMO_WATER, -45.0, 60.0),
            SaturationBranch.of(MagnusForm.WMO_ICE, -65.0, 0.01)), // range over ice FROM MEMORY

    /** Alduchov and Eskridge eq. 21 and 23. */
    ALDUCHOV_ESKRIDGE_1996(
            "Alduchov and Eskridge 1996, J. Appl. Meteorol., eq. 21 and 23 (ice FROM MEMORY)",
            SaturationBranch.of(new MagnusForm(610.94, 17.625, 243.04), -40.0, 50.0), // range FROM MEMORY
            SaturationBranch.of(new MagnusForm(611.21, 22.587, 273.86), -80.0, 0.0)), // FROM MEMORY

    /** ISO 13788 annex E; the prefactor is FROM MEMORY. */
    ISO13788(
            "ISO 13788, annex E (prefactor FROM MEMORY)",
            SaturationBranch.of(MagnusForm.ISO_WATER, 0.0, 60.0), // upper end ours
            SaturationBranch.of(MagnusForm.ISO_ICE, -20.0, 0.0)), // lower end ours: 0.5 % low there

    /** FAO Irrigation and Drainage Paper 56 eq. 11. */
    FAO56(
            "Allen et al. 1998, FAO-56, eq. 11 (second-hand)",
            Phase.WATER,
            SaturationBranch.of(new MagnusForm(610.8, 17.27, 237.3), 0.0, 60.0)), // range ours

    /** Bolton eq. 10. */
    BOLTON_1980(
            "Bolton 1980, eq. 10 (second-hand)",
            Phase.WATER,
            SaturationBranch.of(new MagnusForm(611.2, 17.67, 243.5), -35.0, 35.0)), // range FROM MEMORY

    /** Buck 1981. */
    BUCK_1981(
            "Buck 1981 (second-hand)",
            SaturationBranch.of(new MagnusForm(611.21, 17.502, 240.97), -20.0, 50.0),
            SaturationBranch.of(new MagnusForm(611.15, 22.452, 272.55), -50.0, 0.0)),

    /** Buck 1996. */
    BUCK_1996(
            "Buck 1996 (second-hand)",
            SaturationBranch.of(SaturationEquations::buck1996Water, -40.0, 50.0),
            SaturationBranch.of(SaturationEquations::buck1996Ice, -80.0, 0.0)),

    /** Magnus with constants 6.116441, 7.591386, 240.7263, fitted from -20 to 50 C, where its source states at most 0.083 %. */
    MAGNUS_TO_50C(
            "Magnus, fitted from -20 to 50 C (WAGNER_COEF of psychro/sources, table 1)",
            Phase.WATER,
            SaturationBranch.of(new MagnusForm(611.6441, 7.591386 * Math.log(10.0), 240.7263), -20.0, 50.0)),

    /** Tetens with the constants of Murray 1967. */
    TETENS_MURRAY(
            "Tetens 1930, Murray 1967 (second-hand)",
            Phase.WATER,
            SaturationBranch.of(new MagnusForm(610.78, 7.5 * Math.log(10.0), 237.3), 0.0, 50.0)),

    /** Power law of DIN 4108; 1.098 FROM MEMORY, the published table needs 1.0981. */
    DIN4108_POWER(
            "DIN 4108, power law (second-hand; 1.098 FROM MEMORY)",
            SaturationBranch.of(SaturationEquations::dinWater, 0.0, 30.0),
            SaturationBranch.of(SaturationEquations::dinIce, -20.0, 0.0)),

    /** Sonntag 1994. */
    SONNTAG(
            "Sonntag 1994 (second-hand)",
            SaturationBranch.of(SaturationEquations::sonntagWater, -100.0, 100.0),
            SaturationBranch.of(SaturationEquations::sonntagIce, -100.0, 0.0)),

    /** Hyland and Wexler 1983, as ASHRAE Fundamentals 2017 chapter 1 eq. 5 and 6. */
    HYLAND_WEXLER_1983(
            "Hyland and Wexler 1983; ASHRAE Fundamentals 2017, ch. 1, eq. 5 and 6 (second-hand)",
            SaturationBranch.of(SaturationEquations::hylandWexlerWater, 0.0, 200.0),
            SaturationBranch.of(SaturationEquations::hylandWexlerIce, -100.0, 0.0)),

    /** Goff and Gratch 1946, Smithsonian Meteorological Tables. */
    GOFF_GRATCH_1946(
            "Goff and Gratch 1946 (second-hand)",
            SaturationBranch.of(SaturationEquations::goffGratchWater, -50.0, 102.0), // range FROM MEMORY
            SaturationBranch.of(SaturationEquations::goffGratchIce, -100.0, 0.0)), // range FROM MEMORY

    /** Goff 1957, WMO-No. 49. */
    GOFF_1957_WMO49(
            "Goff 1957, WMO-No. 49 (second-hand)",
            Phase.WATER,
            SaturationBranch.of(SaturationEquations::goff1957Water, -50.0, 100.0)), // range FROM MEMORY

    /** Murphy and Koop eq. 10 (123 to 332 K) and eq. 7 (above 110 K). */
    MURPHY_KOOP_2005(
            "Murphy and Koop 2005, eq. 7 and 10 (second-hand)",
            SaturationBranch.of(SaturationEquations::murphyKoopWater, -150.15, 58.85),
            SaturationBranch.of(SaturationEquations::murphyKoopIce, -163.15, 0.01)),

    /** IAPWS SR1-86, auxiliary equation of Wagner and Pruß: the reference over water. */
    WAGNER_PRUSS_AUX(
            "IAPWS SR1-86(1992), Wagner and Pruss 2002 (second-hand)",
            Phase.WATER,
            SaturationBranch.of(SaturationEquations::wagnerPrussWater, 0.01, 373.946)),

    /** Wagner, Saul and Pruß 1994, superseded by {@link #IAPWS_R14_08}. */
    WAGNER_1994("Wagner et al. 1994", Phase.ICE, SaturationBranch.of(SaturationEquations::wagner1994Ice, -83.0, 0.0)),

    /** IAPWS R14-08(2011) eq. 6: the reference over ice. */
    IAPWS_R14_08(
            "IAPWS R14-08(2011), eq. 6 (second-hand)",
            Phase.ICE,
            SaturationBranch.of(SaturationEquations::iapwsIce, -223.15, 0.01));

    private final String source;
    private final Map<Phase, SaturationBranch> branches;

    SaturationFormula(String source, SaturationBranch water, SaturationBranch ice) {
        this.source = source;
        this.branches = Map.of(Phase.WATER, water, Phase.ICE, ice);
    }

    SaturationFormula(String source, Phase phase, SaturationBranch branch) {
        this.source = source;
        this.branches = Map.of(phase, branch);
    }

    /** Where the formula was published; "second-hand" where the original was not seen. */
    public String source() {
        return source;
    }

    /** Says whether the formula has a branch over this phase. */
    public boolean covers(Phase phase) {
        return branches.containsKey(phase);
    }

    /**
     * Returns the lower end of the range of a branch, °C.
     *
     * @throws IllegalArgumentException if the formula has no such branch
     */
    public double minCelsius(Phase phase) {
        return branch(phase).minCelsius();
    }

    /**
     * Returns the upper end of the range of a branch, °C.
     *
     * @throws IllegalArgumentException if the formula has no such branch
     */
    public double maxCelsius(Phase phase) {
        return branch(phase).maxCelsius();
    }

    /**
     * Returns the formula as a curve over all temperatures, followed beyond its range.
     *
     * @param belowZero the phase that counts below 0 °C
     * @throws IllegalArgumentException if the formula lacks a branch over water or over {@code belowZero}
     */
    public SaturationCurve curve(Phase belowZero) {
        FormulaCurve curve = new FormulaCurve(this, belowZero);
        Optional<MagnusForm> magnus = branch(Phase.WATER).magnus();
        return belowZero == Phase.WATER && magnus.isPresent() ? magnus.get() : curve;
    }

    /** Returns the lowest temperature to which dew and frost points of a branch are followed, °C. */
    double lowestCelsius(Phase phase) {
        return branch(phase).lowestCelsius();
    }

    /**
     * Returns the saturation vapour pressure over a phase.
     *
     * @param celsius temperature, °C; in [{@link #minCelsius}, {@link #maxCelsius}]
     * @return saturation vapour pressure, Pa
     * @throws IllegalArgumentException if the formula has no such branch, or {@code celsius} is NaN or outside its range
     */
    public double pressurePa(Phase phase, double celsius) {
        return branch(phase).pressurePa(celsius);
    }

    /**
     * Returns what the formula gives outside its range, for comparisons and for very dry air.
     *
     * @param celsius temperature, °C; NaN gives NaN
     * @return saturation vapour pressure, Pa
     * @throws IllegalArgumentException if the formula has no such branch
     */
    public double extrapolatedPressurePa(Phase phase, double celsius) {
        return branch(phase).extrapolatedPressurePa(celsius);
    }

    /**
     * Returns the temperature at which a vapour pressure is the saturation pressure over a phase: the dew point over
     * water, the frost point over ice. In closed form for a Magnus formula, otherwise by a bracketed root to 1e-12 K. A
     * branch that reaches below 0 °C is followed further down, to -100 °C; one that ends at 0 °C is not.
     *
     * @param pressurePa vapour pressure, Pa; above 0
     * @return dew or frost point, °C; empty when it lies above the range, below -100 °C, or below a range that ends at 0 °C
     * @throws IllegalArgumentException if the formula has no such branch, or {@code pressurePa} is NaN or not above 0
     */
    public OptionalDouble extrapolatedSaturationCelsius(Phase phase, double pressurePa) {
        Check.positive(pressurePa, "pressurePa", "Pa");
        return branch(phase).extrapolatedCelsius(pressurePa);
    }

    private SaturationBranch branch(Phase phase) {
        SaturationBranch branch = branches.get(phase);
        if (branch == null) {
            throw new IllegalArgumentException("phase: must be one over which " + name() + " is published "
                    + branches.keySet() + ", was " + phase);
        }
        return branch;
    }
}
