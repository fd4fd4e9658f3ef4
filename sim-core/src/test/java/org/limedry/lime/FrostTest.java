package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.reference.DefaultsTable;

final class FrostTest {
    // COMPUTED elsewhere: a wet face at 2 C/70 % is about 0.2 C, at 1 C/80 % about -0.2 C, told to 0.1 K.
    @ParameterizedTest
    @CsvSource({"2, 0.70, 0.2, NONE", "1, 0.80, -0.2, WET_FACE", "-0.5, 0.95, -0.8, AIR"})
    void wetFace_freezesBeforeTheAirDoes(double celsius, double humidity, double face, Frost.Risk risk) {
        double wetFace = Frost.wetFaceCelsius(celsius, humidity);

        assertEquals(face, wetFace, 0.1); // "about"
        assertEquals(risk, Frost.risk(celsius, wetFace));
    }

    // EXACT: saturated air cannot cool a wet face.
    @Test
    void wetFace_inSaturatedAir_isAsWarmAsTheAir() {
        assertEquals(3.0, Frost.wetFaceCelsius(3.0, 1.0), 1e-8); // accuracy of the root
    }

    // EXACT: both lines lie at 0 C; air counts first.
    @ParameterizedTest
    @CsvSource({"0.0, 0.0, NONE", "0.0, -0.1, WET_FACE", "-0.1, 2.0, AIR", "-0.1, -3.0, AIR"})
    void risk_isToldByAirThenFace(double air, double face, Frost.Risk expected) {
        assertEquals(expected, Frost.risk(air, face));
    }

    // PUBLISHED: makers' sheet S10 by way of the defaults: at least 10 days.
    @Test
    void frostFreeDays_areThoseOfTheDefaults() {
        assertEquals(
                DefaultsTable.load().of("frost-free period after application").likely(), Frost.LEAST_FROST_FREE_DAYS);
    }

    @Test
    void wetFace_ofNonsense_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Frost.wetFaceCelsius(Double.NaN, 0.8));
        assertThrows(IllegalArgumentException.class, () -> Frost.wetFaceCelsius(5.0, 1.2));
    }
}
