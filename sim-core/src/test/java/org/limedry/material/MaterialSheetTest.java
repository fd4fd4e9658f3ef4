package org.limedry.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.limedry.reference.Estimate;

final class MaterialSheetTest {
    private static final MaterialSheet SHEET = new MaterialSheet(
            "trial",
            new MaterialSheet.Storage(270.0, 20.0, 32e3),
            new MaterialSheet.Transport(0.15, 9.0),
            new MaterialSheet.Thermal(1750.0, 850.0, 0.70, 0.006));

    // EXACT: n = 1 + ln(w_f/w_80)/ln(a p_80): doubling w_f adds ln 2 / ln(a p_80).
    @Test
    void withFreeSaturation_keepsTheWaterAt80AndMovesTheExponent() {
        MaterialSheet wetter = SHEET.withFreeSaturation(540.0);

        double before = SHEET.storage().retention().exponent();
        double after = wetter.storage().retention().exponent();
        // Some ulp of 1.5.
        assertEquals(Math.log(2.0) / Math.log(MaterialSheet.SUCTION_AT_80_PERCENT_PA / 32e3), after - before, 1e-14);
        assertEquals(20.0, wetter.storage().waterAt80KgPerM3());
        assertEquals(SHEET.transport(), wetter.transport());
    }

    // EXACT: the figures that were put in.
    @Test
    void withOthers_changeOneFigure() {
        assertEquals(64e3, SHEET.withEntrySuction(64e3).storage().entrySuctionPa());
        assertEquals(
                new MaterialSheet.Transport(0.3, 9.0), SHEET.withAbsorption(0.3).transport());
        assertEquals(
                new MaterialSheet.Transport(0.15, 12.0),
                SHEET.withVapourResistance(12.0).transport());
        assertEquals("base", SHEET.named("base").material().name());
    }

    // EXACT: p = -ln(0.8) 1000 461.5 283.15 Pa = 29.16 MPa.
    @Test
    void suctionAt80_isKelvinsAtTenDegrees() {
        // Printed to 0.01 MPa.
        assertEquals(29.16e6, MaterialSheet.SUCTION_AT_80_PERCENT_PA, 0.005e6);
    }

    @Test
    void figuresThatCannotBe_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> SHEET.withFreeSaturation(20.0));
        assertThrows(IllegalArgumentException.class, () -> SHEET.withFreeSaturation(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> SHEET.withEntrySuction(30e6));
        assertThrows(IllegalArgumentException.class, () -> SHEET.withEntrySuction(0.0));
        assertThrows(IllegalArgumentException.class, () -> SHEET.withAbsorption(-0.1));
        assertThrows(IllegalArgumentException.class, () -> SHEET.withVapourResistance(0.9));
        assertThrows(IllegalArgumentException.class, () -> SHEET.named(" "));
        assertThrows(IllegalArgumentException.class, () -> new MaterialSheet.Thermal(0.0, 850.0, 0.7, 0.0));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Assumed("entry", "kPa", new Estimate(1.0, 0.0, 2.0), true, "assumed", ""));
    }
}
