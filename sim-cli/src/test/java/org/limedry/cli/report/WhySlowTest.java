package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.limedry.simulation.History;
import org.limedry.simulation.Warning;
import org.limedry.simulation.WaterAccount;

/** The wait in these tests is that of the first coat: from hour 8 to the ready date, 66 days later. */
final class WhySlowTest {
    private static final int WAIT = 66 * 24;

    /** A room in which nothing hinders drying. */
    private record Course(
            IntToDoubleFunction airCelsius,
            IntToDoubleFunction humidity,
            IntToDoubleFunction dewPoint,
            IntToDoubleFunction open,
            IntToDoubleFunction heater,
            IntToDoubleFunction face) {
        static Course mild() {
            return new Course(hour -> 15.0, hour -> 0.7, hour -> 9.0, hour -> 0.0, hour -> 0.0, hour -> 14.0);
        }
    }

    private static Findings with(Course course, double outdoorHumidity, double agePerDay, double vapour) {
        return Varied.history(
                Invented.oneRoom(),
                old -> new History(
                        old.times(),
                        Invented.series(hour -> 8.0),
                        Invented.series(hour -> outdoorHumidity),
                        List.of(new History.RoomHours(
                                "store",
                                Invented.series(course.airCelsius()),
                                Invented.series(course.humidity()),
                                Invented.series(course.dewPoint()),
                                Invented.series(hour -> 500.0),
                                Invented.series(hour -> 0.02),
                                Invented.series(course.open()),
                                Invented.series(course.heater()),
                                Invented.series(hour -> 0.0))),
                        old.faces().stream()
                                .map(face -> new History.FaceHours(
                                        face.wall(),
                                        face.room(),
                                        Invented.series(course.face()),
                                        face.relativeHumidity(),
                                        face.filmKgPerM2(),
                                        Invented.series(hour -> vapour)))
                                .toList(),
                        old.coats().stream().map(coat -> aged(coat, agePerDay)).toList()));
    }

    private static History.CoatHours aged(History.CoatHours coat, double agePerDay) {
        return new History.CoatHours(
                coat.wall(),
                coat.number(),
                coat.waterKgPerM2(),
                coat.meanSuctionPa(),
                Invented.series(hour -> agePerDay * hour / 24.0),
                coat.carbonatedM());
    }

    private static Findings mild() {
        return with(Course.mild(), 0.7, 1.0, -3.0e-7);
    }

    private static String why(Findings findings) {
        return WhySlow.of(findings, findings.coats().get(0)).full();
    }

    // EXACT: 24 m2 lose 3.3 (1 - exp(-66/60)) litres each, 52.8 in all.
    @Test
    void slowWaitWithNothingToBlame_saysSo() {
        assertEquals(
                "Slow, and no one cause stands out: 53 litres left the coat in 66 days, no wet hours.", why(mild()));
    }

    @Test
    void shortWait_isNotCalledSlow() {
        Findings findings = Varied.coat(
                mild(),
                0,
                Invented.result("store north", 1, "2026-11-02", "2026-11-07", 3.0),
                Invented.range("store north", 1, "2026-11-06", "2026-11-07", "2026-11-09"));

        assertEquals("Drying as it should: 6.3 litres left the coat in 5 days, no wet hours.", why(findings));
    }

    @Test
    void shortWaitThatIsTooFast_asksForMist() {
        Warning fast = new Warning(Warning.Kind.TOO_FAST, "store north", Invented.hour(20), Invented.hour(50), 0.125);
        Findings findings = Varied.coat(
                Varied.warnings(mild(), fast),
                0,
                Invented.result("store north", 1, "2026-11-02", "2026-11-07", 3.0),
                Invented.range("store north", 1, "2026-11-06", "2026-11-07", "2026-11-09"));

        assertEquals(
                "Too fast: from 2 Nov to 4 Nov the north wall lost more than lime can give, up to 0.125 litres a m\u00b2 an"
                        + " hour; mist and screen.",
                why(findings));
    }

    @Test
    void fullAir_isToldWithTheDoors() {
        Course course = new Course(
                hour -> 15.0,
                hour -> hour % 2 == 0 ? 0.96 : 0.9,
                hour -> 9.0,
                hour -> hour % 24 == 9 || hour % 24 == 10 ? 1.0 : 0.0,
                hour -> 0.0,
                hour -> 14.0);

        assertEquals(
                "Slow because the room air was full for 792 hours of 1,584 and could take up hardly any more, with the"
                        + " doors open 2 hours a day.",
                why(with(course, 0.7, 1.0, -3.0e-7)));
    }

    @Test
    void dewPointAtNight_isSuckedBackByNight() {
        Course course = new Course(
                hour -> 15.0,
                hour -> 0.7,
                hour -> hour % 24 < 6 || hour % 24 >= 20 ? 14.5 : 9.0,
                hour -> 0.0,
                hour -> 0.0,
                hour -> 14.0);

        assertEquals(
                "Slow because the north wall was colder than the dew point of the room air for 660 hours of 1,584: what"
                        + " left by day was sucked back by night.",
                why(with(course, 0.7, 1.0, -3.0e-7)));
    }

    @Test
    void wetWall_fedTheCoat() {
        // EXACT: 24 m2 x 5e-7 kg/(m2 s) x 1584 h = 68.4 litres dried, 52.8 of them the coat's own, 15.6 fed.
        assertEquals(
                "Slow, and no one cause stands out: 53 litres left the coat in 66 days, no wet hours.",
                why(with(Course.mild(), 0.7, 1.0, -5.0e-7)));

        // EXACT: 24 m2 x 1e-6 kg/(m2 s) x 1584 h = 136.9 litres dried, 84.0 fed.
        assertEquals(
                "Slow because the north wall is wet itself: it fed 84 litres into the coat while 137 litres left it.",
                why(with(Course.mild(), 0.7, 1.0, -1.0e-6)));
    }

    @Test
    void cold_isMeasuredByTheAgeThatTheRuleAsksFor() {
        Course course = new Course(hour -> 5.0, hour -> 0.7, hour -> 1.0, hour -> 0.0, hour -> 0.0, hour -> 4.2);

        // EXACT: 2 days' worth at a tenth of a day each day are reached in 20 days, 8 hours of which lie before laying.
        assertEquals(
                "Slow because it was cold: the wall stood at 4 \u00b0C on average, and firming that takes 2 days at 20"
                        + " \u00b0C took 20 days.",
                why(with(course, 0.4, 0.1, -3.0e-7)));
    }

    @Test
    void outsideNoDrier_isToldInDays() {
        Course course = new Course(hour -> 8.0, hour -> 0.85, hour -> 5.6, hour -> 0.0, hour -> 0.0, hour -> 7.5);

        assertEquals(
                "Slow because the air outside was no drier than the air inside on 67 of 67 days; only heat or a machine"
                        + " helps then.",
                why(with(course, 0.9, 1.0, -3.0e-7)));
    }

    @Test
    void unfluedHeater_isToldInLitres() {
        Course course = new Course(hour -> 15.0, hour -> 0.7, hour -> 9.0, hour -> 0.0, hour -> 3000.0, hour -> 14.0);
        WaterAccount account = new WaterAccount(
                50.0, 0.0, 0.0, 0.0, 90.0, 0.0, 0.0, 60.0, 0.0, 0.0, 0.0, 0.0, 40.0, 40.0, 0.0, 0.0, 0.0, 0.0);

        assertEquals(
                "Slow because the heater burnt 90 litres of water into the room, more than the 60 litres that left.",
                why(Varied.account(with(course, 0.7, 1.0, -3.0e-7), account)));
    }

    @Test
    void heatWithoutAir_isTakenFromTheWarning() {
        Course course = new Course(hour -> 15.0, hour -> 0.7, hour -> 9.0, hour -> 0.0, hour -> 2000.0, hour -> 14.0);
        Warning warning =
                new Warning(Warning.Kind.HEAT_WITHOUT_AIR, "store", Invented.hour(10), Invented.hour(90), 17.0);

        assertEquals(
                "Slow because heat drove water into the air and too little air let it out: 17 litres went back into cold"
                        + " faces.",
                why(Varied.warnings(with(course, 0.7, 1.0, -3.0e-7), warning)));
    }

    @Test
    void twoCauses_areNamedTheLongerOneFirst() {
        Course course = new Course(
                hour -> 15.0,
                hour -> hour < WAIT / 2 ? 0.96 : 0.9,
                hour -> hour < WAIT / 3 ? 14.5 : 9.0,
                hour -> 0.0,
                hour -> 0.0,
                hour -> 14.0);

        // EXACT: hours 9 to 791, and hours 9 to 527.
        assertEquals(
                "Slow because the room air was full for 783 hours of 1,584 and could take up hardly any more, and because"
                        + " the north wall was colder than the dew point of the room air for 519 hours of 1,584.",
                why(with(course, 0.7, 1.0, -3.0e-7)));
    }

    @Test
    void threeCauses_areCutToTwo() {
        Course course = new Course(hour -> 8.0, hour -> 0.97, hour -> 9.0, hour -> 0.0, hour -> 0.0, hour -> 7.0);

        String why = why(with(course, 0.99, 1.0, -3.0e-7));

        assertEquals(1, Stream.of(why.split(" because ", -1)).skip(1).count() - 1);
    }
}
