package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.climate.Schedule;

/** Every number that a record of this package takes: NaN and the value just outside are refused by name, the end is not. */
final class RoomRecordsTest {
    private static final AirExchange.Balance BALANCE = AirExchange.Balance.EQUAL_VOLUME;

    /** One number of one record. */
    private record Argument(String name, boolean zeroAllowed, DoubleConsumer record) {}

    static Stream<Argument> numbers() {
        return Stream.of(records(), surfaces(), flows()).flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void record_withANumberThatIsNone_isRefusedByName(Argument argument) {
        for (double offered : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -Double.MIN_VALUE}) {
            IllegalArgumentException refused = assertThrows(
                    IllegalArgumentException.class, () -> argument.record().accept(offered));

            assertEquals(argument.name(), refused.getMessage().split(":", 2)[0]);
        }
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void record_atTheEndOfARange_takesWhatTheRangeTakes(Argument argument) {
        if (argument.zeroAllowed()) {
            assertDoesNotThrow(() -> argument.record().accept(0.0));
        } else {
            assertThrows(IllegalArgumentException.class, () -> argument.record().accept(0.0));
        }
        assertDoesNotThrow(() -> argument.record().accept(Double.MIN_VALUE));
    }

    private static List<Argument> records() {
        return List.of(
                new Argument("widthM", false, x -> opening(x, 2.0, 0.3)),
                new Argument("heightM", false, x -> opening(0.9, x, 0.3)),
                new Argument("sillM", true, x -> opening(0.9, 2.0, x)),
                new Argument("volumeM3", false, x -> room(x, 18.0, 2.5, 1e5, 0.6)),
                new Argument("floorAreaM2", false, x -> room(45.0, x, 2.5, 1e5, 0.6)),
                new Argument("heightM", false, x -> room(45.0, 18.0, x, 1e5, 0.6)),
                new Argument("fittingsJPerK", true, x -> room(45.0, 18.0, 2.5, x, 0.6)),
                new Argument("leakagePerHour", true, x -> room(45.0, 18.0, 2.5, 1e5, x)),
                new Argument(
                        "earthFloorKgPerM2S",
                        true,
                        x -> new RoomPlan("store", 45.0, 18.0, 2.5, 1e5, 0.6, x, List.of(), List.of(), 8.0, 0.85)),
                new Argument(
                        "startRelativeHumidity",
                        false,
                        x -> new RoomPlan("store", 45.0, 18.0, 2.5, 1e5, 0.6, 0.0, List.of(), List.of(), 8.0, x)));
    }

    private static List<Argument> surfaces() {
        return List.of(
                new Argument("stillWPerM2K", false, x -> new Surfaces(x, 5.0, 10.0, 4.9, 7e-9, 4.1, 4.2)),
                new Argument("doorOpenWPerM2K", false, x -> new Surfaces(3.0, x, 10.0, 4.9, 7e-9, 4.1, 4.2)),
                new Argument("aimedWPerM2K", false, x -> new Surfaces(3.0, 5.0, x, 4.9, 7e-9, 4.1, 4.2)),
                new Argument("radiantWPerM2K", true, x -> new Surfaces(3.0, 5.0, 10.0, x, 7e-9, 4.1, 4.2)),
                new Argument("vapourPerConvectionKPerJ", true, x -> new Surfaces(3.0, 5.0, 10.0, 4.9, x, 4.1, 4.2)),
                new Argument("outsideStillWPerM2K", true, x -> new Surfaces(3.0, 5.0, 10.0, 4.9, 7e-9, x, 4.2)),
                new Argument("outsideWindWPerM2KPerMPerS", true, x -> new Surfaces(3.0, 5.0, 10.0, 4.9, 7e-9, 4.1, x)));
    }

    private static List<Argument> flows() {
        VapourExchange.HeatCapacity capacity = new VapourExchange.HeatCapacity.OfIncomingAir();
        return List.of(
                new Argument("pressurePa", false, x -> new AirExchange(BALANCE, x, 1.1, 0.4, 0.6)),
                new Argument("openingFactor", false, x -> new AirExchange(BALANCE, 1e5, x, 0.4, 0.6)),
                new Argument("windPressureDifference", true, x -> new AirExchange(BALANCE, 1e5, 1.1, x, 0.6)),
                new Argument("dischargeCoefficient", false, x -> new AirExchange(BALANCE, 1e5, 1.1, 0.4, x)),
                new Argument("areaM2", false, x -> new OpenState.Gap(x, 2.0)),
                new Argument("heightM", false, x -> new OpenState.Gap(1.6, x)),
                new Argument("stackCoefficientM3PerS", true, x -> new OpenState(List.of(), x, 0.3, 1.1, 0.01, 0.02)),
                new Argument("crossAreaM2", true, x -> new OpenState(List.of(), 0.4, x, 1.1, 0.01, 0.02)),
                new Argument("openingFactor", false, x -> new OpenState(List.of(), 0.4, 0.3, x, 0.01, 0.02)),
                new Argument("leakageM3PerS", true, x -> new OpenState(List.of(), 0.4, 0.3, 1.1, x, 0.02)),
                new Argument("fansM3PerS", true, x -> new OpenState(List.of(), 0.4, 0.3, 1.1, 0.01, x)),
                new Argument("coefficientM3PerS", false, DoorFlow::new),
                new Argument("pressurePa", false, x -> new VapourExchange(BALANCE, x, 461.5, capacity)),
                new Argument("gasConstantVapourJPerKgK", false, x -> new VapourExchange(BALANCE, 1e5, x, capacity)),
                new Argument("jPerM3K", false, VapourExchange.HeatCapacity.Fixed::new),
                new Argument("airKg", false, x -> zone(x, 420.0, 0.01, 1e-6)),
                new Argument("startPpm", true, x -> zone(54.0, x, 0.01, 1e-6)),
                new Argument("freshAirKgPerS", true, x -> zone(54.0, 420.0, x, 1e-6)),
                new Argument("sourceKgPerS", true, x -> zone(54.0, 420.0, 0.01, x)),
                new Argument("eachWayKgPerS", true, x -> new CarbonDioxide.Door(0, 1, x)));
    }

    private static void opening(double widthM, double heightM, double sillM) {
        new Opening("door", widthM, heightM, sillM, "N", Optional.empty(), Schedule.never());
    }

    private static void room(
            double volumeM3, double floorAreaM2, double heightM, double fittingsJPerK, double leakagePerHour) {
        new RoomPlan(
                "store",
                volumeM3,
                floorAreaM2,
                heightM,
                fittingsJPerK,
                leakagePerHour,
                0.0,
                List.of(),
                List.of(),
                8.0,
                0.85);
    }

    private static void zone(double airKg, double startPpm, double freshAirKgPerS, double sourceKgPerS) {
        new CarbonDioxide.Zone(airKg, startPpm, freshAirKgPerS, sourceKgPerS, ppm -> 0.0);
    }
}
