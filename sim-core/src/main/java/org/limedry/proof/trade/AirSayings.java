package org.limedry.proof.trade;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.limedry.air.MoistAir;
import org.limedry.climate.Schedule;
import org.limedry.lime.Frost;
import org.limedry.lime.LimeKind;
import org.limedry.lime.TooFast;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.reference.WeatherYear;
import org.limedry.room.DehumidifierOutput;
import org.limedry.room.HeaterOutput;
import org.limedry.room.Plant;
import org.limedry.simulation.Physics;
import org.limedry.units.Units;
import org.limedry.wall.Background;
import org.limedry.wall.Constants;
import org.limedry.wall.Wetness;

/** Sayings about air, plant, frost and drying too fast. */
final class AirSayings {
    private static final double PRESSURE_PA = 101_325.0;
    private static final double GRAMS = 1000.0;
    private static final TradeBench LATH = new TradeBench(
            Background.TIMBER_LATH, Wetness.DRY, TradeBench.base(LimeKind.QUICKLIME, 0.0), 10.0, 10.0, 0.85);

    private AirSayings() {}

    static List<Proof> all() {
        return List.of(outdoorAir(), warmWetAir(), gas(), dehumidifier(), tooFast(), frost());
    }

    private static Saying outdoorAir() {
        return new Saying(
                "T12",
                "What a cubic metre of outdoor air can take up unheated: 1.0 g in January, 4.5 g in July, in Cologne. No weather"
                        + " of Cologne is shipped: Mullingar 2017, mean of all hours of the month.",
                outdoors(1, 1.0),
                outdoors(7, 4.5)
                        .shortOf(
                                "another place: July at Mullingar is cooler and damper than in Cologne; says nothing of the"
                                        + " model"));
    }

    private static Saying.Row outdoors(int month, double grams) {
        return new Saying.Row(
                "Mullingar 2017, month " + month + ": vapour that outdoor air can still take up",
                "g/m3",
                new Source(Label.PUBLISHED, "a maker's page (S96), for Cologne"),
                // A third: another place, and two digits.
                Expected.near(grams, grams / 3.0),
                () -> takesUpGPerM3(WeatherYear.load("mullingar-2017"), month));
    }

    private static double takesUpGPerM3(WeatherYear year, int month) {
        return IntStream.range(0, year.size())
                .filter(row -> year.time(row).atOffset(ZoneOffset.UTC).getMonthValue() == month)
                .mapToDouble(row -> {
                    double humidity = Math.min(1.0, Units.fractionFromPercent(year.rhPercent(row)));
                    double full =
                            MoistAir.of(year.celsius(row), 1.0, PRESSURE_PA).absoluteHumidityKgPerM3();
                    return GRAMS * (1.0 - humidity) * full;
                })
                .average()
                .orElse(Double.NaN);
    }

    private static Saying warmWetAir() {
        return new Saying(
                "T13",
                "Air of 12 C and 90 % let onto walls of 7 C gives them water, about 2 g a cubic metre.",
                new Saying.Row(
                        "vapour in the air less what it holds at the wall, 12 C/90 % at 7 C",
                        "g/m3",
                        new Source(Label.COMPUTED, "difference of vapour densities"),
                        Expected.near(2.0, 0.5),
                        () -> GRAMS
                                * (MoistAir.of(12.0, 0.90, PRESSURE_PA).absoluteHumidityKgPerM3()
                                        - MoistAir.of(7.0, 1.0, PRESSURE_PA).absoluteHumidityKgPerM3())),
                new Saying.Row(
                        "water taken up by damp brick of 7 C, 340 mm, in its first day in such air",
                        "kg/m2",
                        new Source(Label.COMPUTED, "the sign: air wetter than the wall at its face"),
                        Expected.atLeast(0.001),
                        () -> LATH.on(Background.OLD_BRICK, Wetness.DAMP)
                                .in(12.0, 0.90)
                                .takenUpInADayKgPerM2(7.0)));
    }

    private static Saying gas() {
        return new Saying(
                "T14",
                "Burning bottled gas in a room makes 0.127 to 0.128 kg of water for each kWh. (Unflued heaters kill by carbon"
                        + " monoxide; local codes and competent persons come first.)",
                new Saying.Row(
                        "water from LPG",
                        "kg/kWh",
                        new Source(Label.COMPUTED, "molar masses and heating value"),
                        Expected.between(0.1265, 0.1285),
                        () -> HeaterOutput.waterKgPerKwh(Plant.Fuel.UNFLUED_LPG)));
    }

    private static Saying dehumidifier() {
        return new Saying(
                "T15",
                "A refrigerant dehumidifier of 12 litres a day at 30 C/80 % gives 4 to 5 at 15 C/80 %.",
                new Saying.Row(
                        "12 l/day at 30 C/80 %, now at 15 C/80 %",
                        "l/day",
                        new Source(Label.PUBLISHED, "a supplier's figures (S54)"),
                        Expected.between(4.0, 5.0),
                        AirSayings::litresPerDay));
    }

    private static double litresPerDay() {
        Plant.Dehumidifier machine = new Plant.Dehumidifier(
                "machine",
                Plant.Drying.REFRIGERANT,
                12.0 / Units.SECONDS_PER_DAY,
                Plant.Rating.AT_30C_80,
                250.0,
                OptionalDouble.empty(),
                Schedule.always(Instant.EPOCH, Instant.EPOCH.plusSeconds(1)));
        double vapour = MoistAir.of(15.0, 0.80, PRESSURE_PA).absoluteHumidityKgPerM3();
        return Units.SECONDS_PER_DAY
                * DehumidifierOutput.of(machine, Constants.ordinary(), PRESSURE_PA, 15.0, vapour)
                        .waterKgPerS();
    }

    private static Saying tooFast() {
        Source practice = new Source(Label.PRACTICE, "common practice, and makers' sheets");
        double draught = Physics.ordinary().surfaces().doorOpenWPerM2K();
        double still = Physics.ordinary().surfaces().stillWPerM2K();
        return new Saying(
                "T16",
                "In the first 3 days the watch speaks in dry warm moving air and asks for misting, and is silent in cold damp"
                        + " still air.",
                new Saying.Row(
                        "things against a 10 mm coat, 20 C/40 %, draught",
                        "causes",
                        practice,
                        Expected.atLeast(1.0),
                        () -> look(LATH.in(20.0, 0.40), draught).causes().size()),
                new Saying.Row(
                        "the same: asks for misting (1) or not (0)",
                        "-",
                        practice,
                        Expected.near(1.0, 0.0),
                        () -> look(LATH.in(20.0, 0.40), draught).remedies().contains(TooFast.Remedy.MIST) ? 1.0 : 0.0),
                new Saying.Row(
                        "things against a 10 mm coat, 10 C/85 %, still",
                        "causes",
                        practice,
                        Expected.near(0.0, 0.0),
                        () -> look(LATH, still).causes().size()));
    }

    private static TooFast.Finding look(TradeBench bench, double convection) {
        double lossKgPerM2H = bench.dryingOnTheFirstDayKgPerM2(convection) / 24.0;
        boolean draught = convection > Physics.ordinary().surfaces().stillWPerM2K();
        return TooFast.look(new TooFast.Exposure(
                1.0,
                lossKgPerM2H,
                bench.humidity(),
                draught,
                false,
                0.0,
                bench.mix().haired()));
    }

    private static Saying frost() {
        Source source = new Source(Label.COMPUTED, "wet bulb, rounded to a tenth");
        return new Saying(
                "T19",
                "A wet face at 2 C/70 % stands at about 0.2 C, at 1 C/80 % at about -0.2 C: it freezes though the air does not.",
                wetFace(2.0, 0.70, source, 0.2),
                wetFace(1.0, 0.80, source, -0.2));
    }

    private static Saying.Row wetFace(double celsius, double humidity, Source source, double expected) {
        return new Saying.Row(
                "wet face in air of " + celsius + " C and humidity " + humidity,
                "C",
                source,
                Expected.near(expected, 0.1),
                () -> Frost.wetFaceCelsius(celsius, humidity));
    }
}
