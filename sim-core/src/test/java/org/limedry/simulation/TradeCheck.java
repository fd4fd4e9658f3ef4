package org.limedry.simulation;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import org.limedry.lime.LimeKind;
import org.limedry.wall.Background;
import org.limedry.wall.Wetness;

/**
 * One saying of the trade, the band it allows and what the model finds.
 *
 * @param number its number in the list of trade checks
 * @param scenario what is run
 * @param unit unit of the figures
 * @param low low end of the band
 * @param high high end of the band
 * @param label PRACTICE, PUBLISHED or COMPUTED, with the source
 * @param found what the model finds; run when asked
 */
record TradeCheck(
        String number, String scenario, String unit, double low, double high, String label, DoubleSupplier found) {
    private static final double ANY = 1000.0;
    private static final TradeBench HOT = new TradeBench(
            Background.OLD_BRICK, Wetness.DAMP, TradeBench.base(LimeKind.QUICKLIME, 0.0), 10.0, 10.0, 0.80);
    private static final TradeBench SLAG = new TradeBench(
            Background.TIMBER_LATH, Wetness.DAMP, TradeBench.base(LimeKind.QUICKLIME, 10.0), 10.0, 8.0, 0.90);
    private static final TradeBench NHL = new TradeBench(
            Background.OLD_BRICK, Wetness.DAMP, TradeBench.base(LimeKind.NHL_3_5, 0.0), 10.0, 15.0, 0.70);
    private static final TradeBench PUTTY =
            new TradeBench(Background.TIMBER_LATH, Wetness.DRY, TradeBench.base(LimeKind.PUTTY, 0.0), 10.0, 15.0, 0.70);
    private static final TradeBench MILD = HOT.in(20.0, 0.60);
    private static final String PRACTICE = "PRACTICE, common practice, no source";

    static List<TradeCheck> all() {
        String s1 = "PUBLISHED, abstract of Mater. Struct. 43 (2010) 985, joints between bricks";
        return List.of(
                share(
                        "T1",
                        "10 mm on dry brick, 20 C/60 %",
                        0.40,
                        0.60,
                        s1,
                        MILD.on(Background.OLD_BRICK, Wetness.DRY)),
                share("T2", "10 mm on lath", 0.0, 0.10, "judgement", MILD.on(Background.TIMBER_LATH, Wetness.DRY)),
                share("T2", "10 mm on granite", 0.0, 0.10, "judgement", MILD.on(Background.GRANITE, Wetness.DRY)),
                share(
                        "T2",
                        "10 mm on soaked brick",
                        0.0,
                        0.10,
                        "judgement",
                        MILD.on(Background.OLD_BRICK, Wetness.SOAKED)),
                ready("T3", "10 mm hot mix on damp brick, 10 C/80 %", 3.0, 4.0, PRACTICE, HOT),
                ready(
                        "T3",
                        "12 mm hot mix on damp brick, 8 C/90 %",
                        3.0,
                        4.0,
                        PRACTICE,
                        HOT.thick(12.0).in(8.0, 0.90)),
                ready("T4", "10 mm with 10 % slag on lath, 10 C/80 %", 4.0, 5.0, PRACTICE, SLAG.in(10.0, 0.80)),
                ready("T4", "10 mm with 10 % slag on lath, 8 C/90 %", 4.0, 5.0, PRACTICE, SLAG),
                new TradeCheck(
                        "T5",
                        "days on lath over days on brick, 10 C/80 %",
                        "-",
                        1.0,
                        ANY,
                        PRACTICE,
                        () -> HOT.on(Background.TIMBER_LATH, Wetness.DAMP).readyDays() / HOT.readyDays()),
                ready(
                        "T7",
                        "10 mm NHL 3.5 on damp brick, 15 C/70 %",
                        3.0,
                        5.0,
                        "PUBLISHED, conflicting: 72 h at least, 3 to 5 days, 10 days",
                        NHL),
                ready("T8", "10 mm haired putty on lath, 15 C/70 %", 1.0, ANY, "PUBLISHED, not before 24 h", PUTTY),
                new TradeCheck(
                        "T9",
                        "20 mm putty coat on lath, 20 C/60 %: all but a tenth gone",
                        "days",
                        20.0,
                        28.0,
                        "PUBLISHED, three sources: 0.7 to 1.0 mm a day",
                        () -> PUTTY.thick(20.0).in(20.0, 0.60).dryThroughDays(0.1)),
                new TradeCheck(
                        "T9",
                        "20 mm putty coat on lath, 20 C/60 %: all but a hundredth gone",
                        "days",
                        20.0,
                        28.0,
                        "PUBLISHED, three sources: 0.7 to 1.0 mm a day",
                        () -> PUTTY.thick(20.0).in(20.0, 0.60).dryThroughDays(0.01)),
                slower("T10", "10 C against 15 C, 80 %", 1.15, 1.5, 15.0, 10.0),
                slower("T10", "10 C against 20 C, 80 %", 1.5, 2.0, 20.0, 10.0),
                new TradeCheck(
                        "T11",
                        "wet face in still air, closed cavity behind, 10 C/80 %",
                        "kg/(m2 day)",
                        0.24,
                        0.34,
                        "COMPUTED, materials notes E: 0.29",
                        () -> PUTTY.in(10.0, 0.80).dryingOnTheFirstDayKgPerM2()),
                new TradeCheck(
                        "T11",
                        "wet face in still air, closed cavity behind, 20 C/50 %",
                        "kg/(m2 day)",
                        0.95,
                        1.35,
                        "COMPUTED, materials notes E: 1.15",
                        () -> PUTTY.in(20.0, 0.50).dryingOnTheFirstDayKgPerM2()),
                new TradeCheck(
                        "T17",
                        "share drawn by laths wetted with 0.3 kg/m2 over share drawn by dry laths",
                        "-",
                        0.0,
                        0.999,
                        PRACTICE,
                        () -> wetLath().shareGoneInFirstHour(0.3) / wetLath().shareGoneInFirstHour(0.0)),
                new TradeCheck(
                        "T18",
                        "days of 20 mm over days of 10 mm, lath, 8 C/90 %",
                        "-",
                        2.0,
                        ANY,
                        PRACTICE,
                        () -> SLAG.thick(20.0).readyDays() / SLAG.readyDays()),
                new TradeCheck(
                        "T20",
                        "days on brick at 90 % humidity over days on dry brick, 10 C/80 %",
                        "-",
                        0.9,
                        1.1,
                        "PROTOTYPE, an independent calculation",
                        () -> HOT.readyDays()
                                / HOT.on(Background.OLD_BRICK, Wetness.DRY).readyDays()));
    }

    private static TradeBench wetLath() {
        return MILD.on(Background.TIMBER_LATH, Wetness.DRY);
    }

    private static TradeCheck share(
            String number, String words, double low, double high, String label, TradeBench bench) {
        return new TradeCheck(
                number,
                words + ": share of its water gone in 1 h",
                "-",
                low,
                high,
                label,
                () -> bench.shareGoneInFirstHour(0.0));
    }

    private static TradeCheck ready(
            String number, String words, double low, double high, String label, TradeBench bench) {
        return new TradeCheck(number, words + ": until the next coat", "days", low, high, label, bench::readyDays);
    }

    private static TradeCheck slower(String number, String words, double low, double high, double warm, double cold) {
        return new TradeCheck(
                number,
                words + ": times as long on damp brick",
                "-",
                low,
                high,
                "PUBLISHED, conflicting",
                () -> HOT.in(cold, 0.80).readyDays() / HOT.in(warm, 0.80).readyDays());
    }

    /** Returns a row of the page: the figure to two digits, so that the last digit of a library cannot stale it. */
    String row() {
        double value = found.getAsDouble();
        String band = high >= ANY ? "at least " + text(low) : text(low) + " to " + text(high);
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %s | %s | %s |",
                number,
                scenario,
                label,
                band,
                text(value),
                unit,
                value >= low && value <= high ? "inside" : "**outside**");
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 10.0 ? "%.2f" : "%.1f", value);
    }
}
