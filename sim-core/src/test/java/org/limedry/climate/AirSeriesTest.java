package org.limedry.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.air.MagnusForm;

final class AirSeriesTest {
    private static final Instant START = Instant.parse("2001-01-01T00:00:00Z");
    private static final AirSeries SERIES = new AirSeries(
            START,
            List.of(
                    new AirSeries.Row(0.0, 10.0, 0.80),
                    new AirSeries.Row(2.0, 14.0, 0.70),
                    new AirSeries.Row(4.0, 18.0, 0.60),
                    new AirSeries.Row(5.0, 18.0, 0.90)),
            MagnusForm.ISO_WATER);

    private static Instant at(double hour) {
        return START.plusSeconds(Math.round(3600.0 * hour));
    }

    // EXACT: straight lines between the rows in temperature and relative humidity.
    @Test
    void over_aStepWithinARow_hasTheAirOfItsEnds() {
        Outdoors.Piece piece = SERIES.over(at(0.5), at(1.5));

        assertEquals(11.0, piece.startCelsius(), 1.0e-12); // rounding
        assertEquals(13.0, piece.endCelsius(), 1.0e-12); // rounding
        assertEquals(0.775 * MagnusForm.ISO_WATER.pressurePa(11.0), piece.startVapourPressurePa(), 1.0e-9); // rounding
        assertEquals(0.725 * MagnusForm.ISO_WATER.pressurePa(13.0), piece.endVapourPressurePa(), 1.0e-9); // rounding
    }

    // EXACT: the row at 2 h lies on the line through its neighbours, the row at 4 h does not.
    @Test
    void bends_areTheRowsOffTheLine() {
        assertEquals(List.of(at(4.0)), SERIES.bends());
    }

    // EXACT: past its rows the air stays as there.
    @Test
    void air_pastTheRows_staysAsThere() {
        assertEquals(10.0, SERIES.celsius(at(-1.0)), 0.0);
        assertEquals(0.90, SERIES.relativeHumidity(at(9.0)), 0.0);
    }

    @Test
    void rows_outOfOrder_areRefused() {
        List<AirSeries.Row> rows = List.of(new AirSeries.Row(1.0, 10.0, 0.8), new AirSeries.Row(1.0, 11.0, 0.8));

        assertThrows(IllegalArgumentException.class, () -> new AirSeries(START, rows, MagnusForm.ISO_WATER));
    }
}
