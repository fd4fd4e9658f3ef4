package org.limedry.proof.trade;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.limedry.lime.LimeKind;
import org.limedry.wall.Background;
import org.limedry.wall.Wetness;

/**
 * Days until the next coat may go on a 10 mm base coat of quicklime and sand (1 : 2.5, green-hard), by background and by
 * the air of the room, which never changes.
 */
public final class ReadyDays {
    /** Backgrounds, all damp to the hand. */
    public static final List<Background> BACKGROUNDS =
            List.of(Background.OLD_BRICK, Background.TIMBER_LATH, Background.LIME_RUBBLE_STONE);

    /** Relative humidities of the room air, fraction. */
    public static final List<Double> HUMIDITIES = List.of(0.60, 0.75, 0.90);

    /** Temperatures of the room air, C. */
    public static final List<Double> CELSIUS = List.of(5.0, 10.0, 15.0, 20.0);

    private ReadyDays() {}

    /**
     * One coat in one air.
     *
     * @param background what it is on
     * @param relativeHumidity relative humidity of the room air, fraction
     * @param celsius room air, C
     * @param days days until the next coat; empty if not in 60
     */
    public record Cell(Background background, double relativeHumidity, double celsius, OptionalDouble days) {}

    /** Runs every combination: backgrounds, within each the humidities, within each the temperatures. */
    public static List<Cell> all() {
        List<Cell> cells = new ArrayList<>();
        for (Background background : BACKGROUNDS) {
            for (double humidity : HUMIDITIES) {
                for (double celsius : CELSIUS) {
                    TradeBench bench = new TradeBench(
                            background,
                            Wetness.DAMP,
                            TradeBench.base(LimeKind.QUICKLIME, 0.0),
                            10.0,
                            celsius,
                            humidity);
                    double days = bench.readyDays();
                    OptionalDouble known = Double.isNaN(days) ? OptionalDouble.empty() : OptionalDouble.of(days);
                    cells.add(new Cell(background, humidity, celsius, known));
                }
            }
        }
        return List.copyOf(cells);
    }
}
