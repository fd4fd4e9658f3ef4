package org.limedry.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.limedry.Refusal;
import org.limedry.reference.Estimate;

/** What cannot be a material is refused where it is made, each argument by its name. */
final class MaterialArgumentsTest {
    private static final VanGenuchten RETENTION = new VanGenuchten(280.0, 5.0e4, 1.6);
    private static final Closed NONE = Closed.instance();

    @Test
    void retention_refusesEachArgument() {
        Refusal.of("freeSaturationKgPerM3", () -> new VanGenuchten(0.0, 5.0e4, 1.6));
        Refusal.of("entrySuctionPa", () -> new VanGenuchten(280.0, Double.NaN, 1.6));
        Refusal.of("exponent", () -> new VanGenuchten(280.0, 5.0e4, 1.0));
        Refusal.of("waterAt80KgPerM3", () -> VanGenuchten.through(280.0, 280.0, 2.9e7, 5.0e4));
        Refusal.of("entrySuctionPa", () -> VanGenuchten.through(280.0, 20.0, 2.9e7, 2.9e7));
        Refusal.of("saturation", () -> RETENTION.suctionPa(1.0));
    }

    @Test
    void laws_refuseEachArgument() {
        Refusal.of("saturatedS", () -> new MualemLaw(RETENTION, 0.0));
        Refusal.of("absorptionKgPerM2SqrtS", () -> new CapillaryLaw(RETENTION, -0.1, true, 1.1));
        Refusal.of("rescale", () -> new CapillaryLaw(RETENTION, 0.1, true, 0.0));
        Refusal.of("airKgPerMSPa", () -> new VapourResistance(0.0, 8.0, 280.0));
        Refusal.of("resistanceFactor", () -> new VapourResistance(2.0e-10, 0.99, 280.0));
        Refusal.of("freeSaturationKgPerM3", () -> new VapourResistance(2.0e-10, 8.0, Double.NaN));
    }

    @Test
    void material_refusesEachArgument() {
        Refusal.of("name", () -> new Material(" ", RETENTION, NONE, NONE, NONE, 1.4e6));
        Refusal.of("dryHeatCapacityJPerM3K", () -> new Material("brick", RETENTION, NONE, NONE, NONE, 0.0));
        Refusal.of("heatCapacityJPerKgK", () -> new MaterialSheet.Thermal(1650.0, 0.0, 0.6, 0.01));
        Refusal.of("dryConductivityWPerMK", () -> new MaterialSheet.Thermal(1650.0, 850.0, Double.NaN, 0.01));
        Refusal.of("conductivityGrowthM3PerKg", () -> new MaterialSheet.Thermal(1650.0, 850.0, 0.6, -0.01));
        Refusal.of("freeSaturationKgPerM3", () -> new MaterialSheet.Storage(Double.NaN, 20.0, 5.0e4));
    }

    @Test
    void tables_refuseEachArgument() {
        double[] one = {3.0};
        double[] two = {3.0, 5.0};
        double[] below = {-3.0, 5.0};
        double[] falling = {5.0, 3.0};
        Refusal.of("waterKgPerM3 rows", () -> new LinearTable(one, one));
        Refusal.of("value", () -> new LinearTable(two, one));
        Refusal.of("value", () -> new LinearTable(two, new double[] {7.0, Double.NaN}));
        Refusal.of("waterKgPerM3", () -> new LinearTable(below, two));
        Refusal.of("waterKgPerM3", () -> new LinearTable(falling, two));
        Refusal.of("waterKgPerM3", () -> new SuctionTable(two, one, two));
        Refusal.of("conductivityS", () -> new SuctionTable(two, falling, one));
        Refusal.of("suctionPa", () -> new SuctionTable(below, falling, two));
        Refusal.of("waterKgPerM3", () -> new SuctionTable(two, new double[] {5.0, -1.0}, two));
        Refusal.of("conductivityS", () -> new SuctionTable(two, falling, below));
    }

    // EXACT: water that stays from one row to the next is taken; a table holds its first water at zero suction.
    @Test
    void suctionTable_ofWaterThatStays_isTaken() {
        SuctionTable table =
                new SuctionTable(new double[] {2.0e2, 3.0e3}, new double[] {250.0, 250.0}, new double[] {1e-9, 1e-10});

        assertEquals(250.0, table.freeSaturationKgPerM3());
        assertEquals(3.0e3, table.rowSuctionPa(1));
        assertEquals(0.0, table.waterSlope(0));
    }

    // EXACT: 50 kg/m3 less from e^2 to e^4 Pa; a last value that is not 0 is held.
    @Test
    void tables_haveTheSlopeOfTheirChordAndHoldTheirLastValue() {
        SuctionTable falling = new SuctionTable(
                new double[] {Math.exp(2.0), Math.exp(4.0)}, new double[] {250.0, 200.0}, new double[] {1e-9, 1e-10});
        LinearTable conductivity = new LinearTable(new double[] {0.0, 200.0}, new double[] {0.6, 1.4});

        assertEquals(-25.0, falling.waterSlope(0), 1e-13); // rounding
        assertEquals(1.4, conductivity.at(300.0));
    }

    @Test
    void assumed_refusesEachArgument() {
        Estimate fromZero = new Estimate(1.0, 0.0, 2.0);
        Refusal.of("words", () -> new Assumed("", "kPa", fromZero, false, "assumed", ""));
        Refusal.of("status", () -> new Assumed("entry", "kPa", fromZero, false, " ", ""));
    }

    // EXACT: what may be nothing is taken only where it is no factor.
    @Test
    void assumed_downToNothing_isTakenWhereItIsNoFactor() {
        new Assumed("steam", "kg/kg", new Estimate(1.0, 0.0, 2.0), false, "assumed", "");
    }
}
