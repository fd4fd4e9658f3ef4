package org.limedry.simulation;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.limedry.lime.LimeKind;
import org.limedry.wall.Background;
import org.limedry.wall.Wetness;

/**
 * One saying of the trade, the band it allows and what the model finds.
 *
 * @param number its number in the list of trade checks
 * @param scenario what is run
 * @param unit unit of the figures
 * @param band what is allowed
 * @param found what the model finds; run when asked
 */
record TradeCheck(String number, String scenario, String unit, Band band, DoubleSupplier found) {
    /**
     * What is allowed.
     *
     * @param low low end
     * @param high high end; {@link #ANY} and above for none
     * @param label PRACTICE, PUBLISHED, COMPUTED or judgement, with the source
     */
    record Band(double low, double high, String label) {
        private static final double ANY = 1000.0;

        static Band practice(double low, double high) {
            return new Band(low, high, "PRACTICE, common practice, no source");
        }

        static Band conflicting(double low, double high) {
            return new Band(low, high, "PUBLISHED, conflicting");
        }

        String words() {
            return high >= ANY ? "at least " + text(low) : text(low) + " to " + text(high);
        }
    }

    private static final TradeBench HOT = new TradeBench(
            Background.OLD_BRICK, Wetness.DAMP, TradeBench.base(LimeKind.QUICKLIME, 0.0), 10.0, 10.0, 0.80);
    private static final TradeBench SLAG = new TradeBench(
            Background.TIMBER_LATH, Wetness.DAMP, TradeBench.base(LimeKind.QUICKLIME, 10.0), 10.0, 8.0, 0.90);
    private static final TradeBench NHL = new TradeBench(
            Background.OLD_BRICK, Wetness.DAMP, TradeBench.base(LimeKind.NHL_3_5, 0.0), 10.0, 15.0, 0.70);
    private static final TradeBench PUTTY =
            new TradeBench(Background.TIMBER_LATH, Wetness.DRY, TradeBench.base(LimeKind.PUTTY, 0.0), 10.0, 15.0, 0.70);
    private static final TradeBench MILD = HOT.in(20.0, 0.60);

    static List<TradeCheck> all() {
        return Stream.of(suction(), waits(), through(), cold(), rest())
                .flatMap(List::stream)
                .toList();
    }

    private static List<TradeCheck> suction() {
        Band brick = new Band(
                0.40,
                0.60,
                "PUBLISHED, abstract of Mater. Struct. 43 (2010) 985, joints between bricks, within a minute");
        Band little = new Band(0.0, 0.10, "judgement");
        return List.of(
                share("T1", "10 mm on dry brick, 20 C/60 %", brick, MILD.on(Background.OLD_BRICK, Wetness.DRY)),
                share("T2", "10 mm on lath", little, MILD.on(Background.TIMBER_LATH, Wetness.DRY)),
                share("T2", "10 mm on granite", little, MILD.on(Background.GRANITE, Wetness.DRY)),
                share("T2", "10 mm on soaked brick", little, MILD.on(Background.OLD_BRICK, Wetness.SOAKED)));
    }

    private static List<TradeCheck> waits() {
        Band days3to4 = Band.practice(3.0, 4.0);
        Band days4to5 = Band.practice(4.0, 5.0);
        Band nhl = new Band(3.0, 5.0, "PUBLISHED, conflicting: 72 h at least, 3 to 5 days, 10 days");
        return List.of(
                ready("T3", "10 mm hot mix on damp brick, 10 C/80 %", days3to4, HOT),
                ready(
                        "T3",
                        "12 mm hot mix on damp brick, 8 C/90 %",
                        days3to4,
                        HOT.thick(12.0).in(8.0, 0.90)),
                ready("T4", "10 mm with 10 % slag on lath, 10 C/80 %", days4to5, SLAG.in(10.0, 0.80)),
                ready("T4", "10 mm with 10 % slag on lath, 8 C/90 %", days4to5, SLAG),
                ratio(
                        "T5",
                        "days on lath over days on brick, 10 C/80 %",
                        Band.practice(1.0, Band.ANY),
                        () -> HOT.on(Background.TIMBER_LATH, Wetness.DAMP).readyDays() / HOT.readyDays()),
                ready("T7", "10 mm NHL 3.5 on damp brick, 15 C/70 %", nhl, NHL),
                ready(
                        "T8",
                        "10 mm haired putty on lath, 15 C/70 %",
                        new Band(1.0, Band.ANY, "PUBLISHED, not before 24 h"),
                        PUTTY));
    }

    private static List<TradeCheck> through() {
        Band dry = new Band(20.0, 28.0, "PUBLISHED, three sources: 0.7 to 1.0 mm a day");
        TradeBench thick = PUTTY.thick(20.0).in(20.0, 0.60);
        return List.of(
                new TradeCheck(
                        "T9",
                        "20 mm putty coat on lath, 20 C/60 %: all but a tenth gone",
                        "days",
                        dry,
                        () -> thick.dryThroughDays(0.1)),
                new TradeCheck(
                        "T9",
                        "20 mm putty coat on lath, 20 C/60 %: all but a hundredth gone",
                        "days",
                        dry,
                        () -> thick.dryThroughDays(0.01)));
    }

    private static List<TradeCheck> cold() {
        return List.of(
                ratio(
                        "T10",
                        "10 C against 15 C, 80 %: times as long on damp brick",
                        Band.conflicting(1.15, 1.5),
                        () -> HOT.in(10.0, 0.80).readyDays()
                                / HOT.in(15.0, 0.80).readyDays()),
                ratio(
                        "T10",
                        "10 C against 20 C, 80 %: times as long on damp brick",
                        Band.conflicting(1.5, 2.0),
                        () -> HOT.in(10.0, 0.80).readyDays()
                                / HOT.in(20.0, 0.80).readyDays()));
    }

    private static List<TradeCheck> rest() {
        TradeBench lath = MILD.on(Background.TIMBER_LATH, Wetness.DRY);
        return List.of(
                new TradeCheck(
                        "T11",
                        "wet face in still air, closed cavity behind, 10 C/80 %",
                        "kg/(m2 day)",
                        new Band(0.24, 0.34, "COMPUTED, materials notes E: 0.29"),
                        () -> PUTTY.in(10.0, 0.80).dryingOnTheFirstDayKgPerM2()),
                new TradeCheck(
                        "T11",
                        "wet face in still air, closed cavity behind, 20 C/50 %",
                        "kg/(m2 day)",
                        new Band(0.95, 1.35, "COMPUTED, materials notes E: 1.15"),
                        () -> PUTTY.in(20.0, 0.50).dryingOnTheFirstDayKgPerM2()),
                ratio(
                        "T17",
                        "share drawn by laths wetted with 0.3 kg/m2 over share drawn by dry laths",
                        Band.practice(0.0, 0.999),
                        () -> lath.shareGoneInFirstHour(0.3) / lath.shareGoneInFirstHour(0.0)),
                ratio(
                        "T18",
                        "days of 20 mm over days of 10 mm, lath, 8 C/90 %",
                        Band.practice(2.0, Band.ANY),
                        () -> SLAG.thick(20.0).readyDays() / SLAG.readyDays()),
                ratio(
                        "T20",
                        "days on brick at 90 % humidity over days on dry brick, 10 C/80 %",
                        new Band(0.9, 1.1, "PROTOTYPE, an independent calculation"),
                        () -> HOT.readyDays()
                                / HOT.on(Background.OLD_BRICK, Wetness.DRY).readyDays()));
    }

    private static TradeCheck share(String number, String words, Band band, TradeBench bench) {
        return new TradeCheck(
                number, words + ": share of its water gone in 1 h", "-", band, () -> bench.shareGoneInFirstHour(0.0));
    }

    private static TradeCheck ready(String number, String words, Band band, TradeBench bench) {
        return new TradeCheck(number, words + ": until the next coat", "days", band, bench::readyDays);
    }

    private static TradeCheck ratio(String number, String words, Band band, DoubleSupplier found) {
        return new TradeCheck(number, words, "-", band, found);
    }

    /** Returns a row of the page: the figure to two digits, so that the last digit of a library cannot stale it. */
    String row() {
        double value = found.getAsDouble();
        String verdict = value >= band.low() && value <= band.high() ? "inside" : "**outside**";
        return String.join(
                " | ", "| " + number, scenario, band.label(), band.words(), text(value), unit, verdict + " |");
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 10.0 ? "%.2f" : "%.1f", value);
    }
}
