package org.limedry.proof.trade;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.limedry.lime.LimeKind;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.wall.Background;
import org.limedry.wall.Wetness;

/** Sayings about one coat: suction, waits, drying through. */
final class CoatSayings {
    private static final TradeBench HOT = new TradeBench(
            Background.OLD_BRICK, Wetness.DAMP, TradeBench.base(LimeKind.QUICKLIME, 0.0), 10.0, 10.0, 0.80);
    private static final TradeBench SLAG = new TradeBench(
            Background.TIMBER_LATH, Wetness.DAMP, TradeBench.base(LimeKind.QUICKLIME, 10.0), 10.0, 8.0, 0.90);
    private static final TradeBench NHL = new TradeBench(
            Background.OLD_BRICK, Wetness.DAMP, TradeBench.base(LimeKind.NHL_3_5, 0.0), 10.0, 15.0, 0.70);
    private static final TradeBench PUTTY =
            new TradeBench(Background.TIMBER_LATH, Wetness.DRY, TradeBench.base(LimeKind.PUTTY, 0.0), 10.0, 15.0, 0.70);
    private static final TradeBench MILD = HOT.in(20.0, 0.60);

    private static final Source PRACTICE = new Source(Label.PRACTICE, "common practice, no source");
    private static final Source JUDGEMENT = new Source(Label.JUDGEMENT, "no source");
    private static final Source CONFLICTING =
            new Source(Label.PUBLISHED, "sources conflict: 25 and 50 % (S33), or 100 % (S95)");
    private static final Source DRY_THROUGH =
            new Source(Label.PUBLISHED, "three sources: 0.7 to 1.0 mm a day (S92, S93, S94)");
    private static final Source WET_FACE = new Source(Label.COMPUTED, "the same transfer equations worked out apart");
    private static final Source INDEPENDENT =
            new Source(Label.COMPUTED, "an independent calculation by the same equations");
    private static final String EARLY = "the model is early, though the ready rule was fitted to T3 to T8";

    private CoatSayings() {}

    static List<Proof> all() {
        return List.of(
                suction(),
                little(),
                brick(),
                lath(),
                brickFirst(),
                hydraulic(),
                putty(),
                dryThrough(),
                cold(),
                wetFace(),
                soaked(),
                thick(),
                damp());
    }

    private static Saying.Row share(String words, Source source, Expected expected, TradeBench bench) {
        return new Saying.Row(
                words + ": share of its water gone in 1 h",
                "-",
                source,
                expected,
                () -> bench.shareGoneInFirstHour(0.0));
    }

    private static Saying.Row ready(String words, Source source, Expected expected, TradeBench bench) {
        return new Saying.Row(words + ": until the next coat", "days", source, expected, bench::readyDays);
    }

    private static Saying.Row ratio(String words, Source source, Expected expected, DoubleSupplier found) {
        return new Saying.Row(words, "-", source, expected, found);
    }

    private static Saying suction() {
        Source brick = new Source(
                Label.PUBLISHED,
                "abstract of Mater. Struct. 43 (2010) 985 (S1), joints between bricks, within a minute");
        return new Saying(
                "T1",
                "A fresh coat gives dry ordinary brick about half of its water.",
                share(
                        "10 mm on dry brick, 20 C/60 %",
                        brick, Expected.between(0.40, 0.60), MILD.on(Background.OLD_BRICK, Wetness.DRY)));
    }

    private static Saying little() {
        Expected expected = Expected.between(0.0, 0.10);
        return new Saying(
                "T2",
                "Lath, granite and saturated brick draw little in the first hour.",
                share("10 mm on lath", JUDGEMENT, expected, MILD.on(Background.TIMBER_LATH, Wetness.DRY)),
                share("10 mm on granite", JUDGEMENT, expected, MILD.on(Background.GRANITE, Wetness.DRY)),
                share("10 mm on soaked brick", JUDGEMENT, expected, MILD.on(Background.OLD_BRICK, Wetness.SOAKED)));
    }

    private static Saying brick() {
        Expected days = Expected.between(3.0, 4.0);
        return new Saying(
                "T3",
                "Base coat of quicklime and sand on damp brick in a cold damp building going well: 3 to 4 days.",
                ready("10 mm hot mix on damp brick, 10 C/80 %", PRACTICE, days, HOT),
                ready(
                        "12 mm hot mix on damp brick, 8 C/90 %",
                        PRACTICE, days, HOT.thick(12.0).in(8.0, 0.90)));
    }

    private static Saying lath() {
        Expected days = Expected.between(4.0, 5.0);
        return new Saying(
                "T4",
                "The same mix with about 10 % slag on lath, cold: 4 to 5 days.",
                ready("10 mm with 10 % slag on lath, 10 C/80 %", PRACTICE, days, SLAG.in(10.0, 0.80))
                        .shortOf(EARLY),
                ready("10 mm with 10 % slag on lath, 8 C/90 %", PRACTICE, days, SLAG)
                        .shortOf(EARLY));
    }

    private static Saying brickFirst() {
        return new Saying(
                "T5",
                "Brick takes up quicker than lath under equal air.",
                ratio(
                        "days on lath over days on brick, 10 C/80 %",
                        PRACTICE,
                        Expected.atLeast(1.0),
                        () -> HOT.on(Background.TIMBER_LATH, Wetness.DAMP).readyDays() / HOT.readyDays()));
    }

    private static Saying hydraulic() {
        Source source =
                new Source(Label.PUBLISHED, "sources conflict: 72 h at least (S38), 3 to 5 days and 10 days (S91)");
        return new Saying(
                "T7",
                "Hydraulic scratch coat, mild: not before 72 h, 3 to 5 days usual.",
                ready("10 mm NHL 3.5 on damp brick, 15 C/70 %", source, Expected.between(3.0, 5.0), NHL)
                        .shortOf(EARLY));
    }

    private static Saying putty() {
        return new Saying(
                "T8",
                "Haired putty coat on lath, mild: not before 24 h, then until green hard.",
                ready(
                        "10 mm haired putty on lath, 15 C/70 %",
                        new Source(Label.PUBLISHED, "not before 24 h (S40)"), Expected.atLeast(1.0), PUTTY));
    }

    private static Saying dryThrough() {
        Expected days = Expected.between(20.0, 28.0);
        TradeBench thick = PUTTY.thick(20.0).in(20.0, 0.60);
        return new Saying(
                "T9",
                "20 mm at 20 C, 50 to 65 %: dry through in 20 to 28 days. The sources do not say what dry through is.",
                new Saying.Row(
                                "20 mm putty coat on lath, 20 C/60 %: all but a tenth of what leaves gone",
                                "days", DRY_THROUGH, days, () -> thick.dryThroughDays(0.1))
                        .shortOf("a tenth left is one reading of dry through; by a hundredth left it is met"),
                new Saying.Row(
                        "20 mm putty coat on lath, 20 C/60 %: all but a hundredth gone",
                        "days", DRY_THROUGH, days, () -> thick.dryThroughDays(0.01)));
    }

    private static Saying cold() {
        return new Saying(
                "T10",
                "5 K colder takes a quarter longer, 10 K colder half as long again, or twice as long.",
                ratio(
                        "10 C against 15 C, 80 %: times as long on damp brick",
                        CONFLICTING,
                        Expected.between(1.15, 1.5),
                        () -> HOT.in(10.0, 0.80).readyDays()
                                / HOT.in(15.0, 0.80).readyDays()),
                ratio(
                        "10 C against 20 C, 80 %: times as long on damp brick",
                        CONFLICTING,
                        Expected.between(1.5, 2.0),
                        () -> HOT.in(10.0, 0.80).readyDays()
                                / HOT.in(20.0, 0.80).readyDays()));
    }

    private static Saying wetFace() {
        return new Saying(
                "T11",
                "What a wet face gives to still air.",
                new Saying.Row(
                        "wet face in still air, closed cavity behind, 10 C/80 %, first day",
                        "kg/(m2 day)",
                        WET_FACE,
                        Expected.near(0.29, 0.05),
                        () -> PUTTY.in(10.0, 0.80).dryingOnTheFirstDayKgPerM2()),
                new Saying.Row(
                        "wet face in still air, closed cavity behind, 20 C/50 %, first day",
                        "kg/(m2 day)",
                        WET_FACE,
                        Expected.near(1.15, 0.20),
                        () -> PUTTY.in(20.0, 0.50).dryingOnTheFirstDayKgPerM2()));
    }

    private static Saying soaked() {
        TradeBench lath = MILD.on(Background.TIMBER_LATH, Wetness.DRY);
        return new Saying(
                "T17",
                "Laths that have been soaked draw less from the coat than dry laths.",
                ratio(
                        "share drawn by laths wetted with 0.3 kg/m2 over share drawn by dry laths",
                        PRACTICE,
                        Expected.atMost(0.999),
                        () -> lath.shareGoneInFirstHour(0.3) / lath.shareGoneInFirstHour(0.0)));
    }

    private static Saying thick() {
        return new Saying(
                "T18",
                "In one coat thicker than 10 to 12 mm the wait grows faster than the thickness.",
                ratio(
                        "days of 20 mm over days of 10 mm, lath, 8 C/90 %",
                        PRACTICE, Expected.atLeast(2.0), () -> SLAG.thick(20.0).readyDays() / SLAG.readyDays()));
    }

    private static Saying damp() {
        return new Saying(
                "T20",
                "A wall at 90 % humidity hardly differs from a dry one: only liquid wetness matters.",
                ratio(
                        "days on brick at 90 % humidity over days on dry brick, 10 C/80 %",
                        INDEPENDENT,
                        Expected.near(1.0, 0.1),
                        () -> HOT.readyDays()
                                / HOT.on(Background.OLD_BRICK, Wetness.DRY).readyDays()));
    }
}
