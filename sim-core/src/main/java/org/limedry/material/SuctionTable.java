package org.limedry.material;

import java.util.Arrays;
import org.limedry.units.Check;

/**
 * Water and liquid conductivity told by a table over suction.
 *
 * <p>Between two rows water and the logarithm of the conductivity are linear in the logarithm of suction; where a
 * conductivity is 0 at one of them, the conductivity itself is linear in the logarithm of suction. Past both ends all is
 * held constant. Nothing is smoothed: the rows are met exactly, slopes jump at them.
 */
public final class SuctionTable implements Retention, LiquidTransport {
    /** Below this distance of {@code exponent + 1} from 0 the integral is taken by its series-proof form. */
    private static final double NEARLY_INVERSE = 1.0e-2;

    private final double[] logSuction;
    private final double[] suctionPa;
    private final double[] water;
    private final double[] conductivity;
    private final double[] waterSlope;
    private final double[] exponent;
    private final double[] conductivitySlope;
    private final boolean[] isPower;
    private final double[] potential;

    /**
     * Takes the rows of a table.
     *
     * @param suctionPa suction, Pa; above 0, rising from row to row; at least two
     * @param waterKgPerM3 water, kg/m3; at least 0, never rising
     * @param conductivityS liquid conductivity, s; at least 0
     */
    public SuctionTable(double[] suctionPa, double[] waterKgPerM3, double[] conductivityS) {
        this.suctionPa = suctionPa.clone();
        water = waterKgPerM3.clone();
        conductivity = conductivityS.clone();
        int rows = suctionPa.length;
        Check.atLeast(rows, 2, "suctionPa rows");
        Check.that(water.length == rows, "waterKgPerM3", "one for each suction", water.length);
        Check.that(conductivity.length == rows, "conductivityS", "one for each suction", conductivity.length);
        for (int k = 0; k < rows; k++) {
            Check.positive(suctionPa[k], "suctionPa", "Pa");
            Check.nonNegative(water[k], "waterKgPerM3", "kg/m3");
            Check.nonNegative(conductivity[k], "conductivityS", "s");
            Check.that(k == 0 || suctionPa[k] > suctionPa[k - 1], "suctionPa", "rising from row to row", suctionPa[k]);
            Check.that(k == 0 || water[k] <= water[k - 1], "waterKgPerM3", "never rising with suction", water[k]);
        }
        logSuction = Arrays.stream(suctionPa).map(Math::log).toArray();
        waterSlope = new double[rows - 1];
        exponent = new double[rows - 1];
        conductivitySlope = new double[rows - 1];
        isPower = new boolean[rows - 1];
        potential = new double[rows];
        for (int k = rows - 2; k >= 0; k--) {
            fillPiece(k);
        }
    }

    private void fillPiece(int k) {
        double width = logSuction[k + 1] - logSuction[k];
        waterSlope[k] = (water[k + 1] - water[k]) / width;
        isPower[k] = conductivity[k] > 0.0 && conductivity[k + 1] > 0.0;
        exponent[k] = isPower[k] ? Math.log(conductivity[k + 1] / conductivity[k]) / width : 0.0;
        conductivitySlope[k] = (conductivity[k + 1] - conductivity[k]) / width;
        potential[k] = potential(k, logSuction[k]);
    }

    /** Returns how many rows there are. */
    public int rows() {
        return suctionPa.length;
    }

    /** Returns the suction of a row, Pa. */
    public double rowSuctionPa(int row) {
        return suctionPa[row];
    }

    /**
     * Returns the piece between two rows in which a suction lies; the first or last for suctions past the ends.
     *
     * @param ofLogSuction natural logarithm of the suction in Pa
     */
    public int piece(double ofLogSuction) {
        int low = 0;
        int high = logSuction.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (logSuction[middle] <= ofLogSuction) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Returns the water at a suction inside a piece, kg/m3. */
    public double water(int piece, double ofLogSuction) {
        return water[piece] + waterSlope[piece] * (ofLogSuction - logSuction[piece]);
    }

    /** Returns the slope of the water by the logarithm of suction on a piece, kg/m3. */
    public double waterSlope(int piece) {
        return waterSlope[piece];
    }

    /** Returns the conductivity at a suction inside a piece, s. */
    public double conductivity(int piece, double ofLogSuction) {
        double beyond = ofLogSuction - logSuction[piece];
        return isPower[piece]
                ? conductivity[piece] * Math.exp(exponent[piece] * beyond)
                : conductivity[piece] + conductivitySlope[piece] * beyond;
    }

    /**
     * Returns the flux potential at a suction inside a piece, the integral of the conductivity from there to the last row,
     * kg/(m s).
     *
     * <p>In closed form. With {@code K = K_r (p/p_r)^m} from the drier row r: {@code (K_r p_r - K p)/(m + 1)}, or {@code
     * K_r p_r ln(p_r/p)} for m = -1; with {@code K = a + s ln p}: {@code (K_r - s) p_r - (K - s) p}.
     */
    public double potential(int piece, double ofLogSuction) {
        int dry = piece + 1;
        double before = ofLogSuction - logSuction[dry];
        if (!isPower[piece]) {
            double s = conductivitySlope[piece];
            double here = conductivity[dry] + s * before;
            return potential[dry] + (conductivity[dry] - s) * suctionPa[dry] - (here - s) * Math.exp(ofLogSuction);
        }
        double flow = conductivity[dry] * suctionPa[dry];
        double order = exponent[piece] + 1.0;
        if (Math.abs(order * before) > NEARLY_INVERSE) {
            return potential[dry] + (flow - flow * Math.exp(order * before)) / order;
        }
        return potential[dry] - flow * (order == 0.0 ? before : Math.expm1(order * before) / order);
    }

    /** Returns the flux potential at any suction, kg/(m s): 0 at the last row, below 0 past it. */
    public double potentialKgPerMS(double ofSuctionPa) {
        int last = rows() - 1;
        if (ofSuctionPa <= suctionPa[0]) {
            return potential[0] + conductivity[0] * (suctionPa[0] - ofSuctionPa);
        }
        if (ofSuctionPa >= suctionPa[last]) {
            return conductivity[last] * (suctionPa[last] - ofSuctionPa);
        }
        double u = Math.log(ofSuctionPa);
        return potential(piece(u), u);
    }

    @Override
    public double waterKgPerM3(double ofSuctionPa) {
        if (isPastAnEnd(ofSuctionPa)) {
            return water[nearestEnd(ofSuctionPa)];
        }
        double u = Math.log(ofSuctionPa);
        return water(piece(u), u);
    }

    @Override
    public double conductivityS(double ofSuctionPa) {
        if (isPastAnEnd(ofSuctionPa)) {
            return conductivity[nearestEnd(ofSuctionPa)];
        }
        double u = Math.log(ofSuctionPa);
        return conductivity(piece(u), u);
    }

    @Override
    public double slopeKgPerM3(double ofSuctionPa) {
        return isPastAnEnd(ofSuctionPa) ? 0.0 : waterSlope[piece(Math.log(ofSuctionPa))];
    }

    @Override
    public double freeSaturationKgPerM3() {
        return water[0];
    }

    private boolean isPastAnEnd(double ofSuctionPa) {
        return ofSuctionPa <= suctionPa[0] || ofSuctionPa >= suctionPa[rows() - 1];
    }

    private int nearestEnd(double ofSuctionPa) {
        return ofSuctionPa <= suctionPa[0] ? 0 : rows() - 1;
    }
}
