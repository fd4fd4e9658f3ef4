package org.limedry.study.odds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.limedry.simulation.Outcome;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import org.limedry.study.StudyFixture;
import org.limedry.study.Uncertain;

/** Which unknown matters, on made-up laws whose answer is known. */
final class OddsTest {
    private static final Uncertain WET =
            new Uncertain("wetness", "wetness", "%", 30.0, 50.0, 70.0, false, "judgement", "none");
    private static final Uncertain LEAK =
            new Uncertain("leakage", "leakage", "1/h", 0.2, 0.6, 2.0, true, "FROM MEMORY", "none");
    private static final Uncertain IDLE = new Uncertain("idle", "idle", "-", 0.0, 1.0, 2.0, false, "judgement", "none");
    private static final List<Uncertain> UNKNOWNS = List.of(WET, LEAK, IDLE);
    private static final Instant END = StudyFixture.FROM.plus(Duration.ofDays(StudyFixture.RUN_DAYS));

    private static List<EnsembleResult.Member> members(int count, ToDoubleFunction<Draw> days) {
        return Ensemble.over(UNKNOWNS, count).draws().stream()
                .map(draw -> StudyFixture.member(
                        draw,
                        StudyFixture.outcome(
                                new Outcome.Ending.Complete(),
                                StudyFixture.coat(1, StudyFixture.ready(days.applyAsDouble(draw)), false))))
                .toList();
    }

    private static Odds odds(int count, ToDoubleFunction<Draw> days) {
        return Odds.of(members(count, days), 0, UNKNOWNS, END, Odds.Drawn.ONE_BY_ONE);
    }

    // EXACT: dates 20 + 10 (wet) - 2 (leak) days, each evenly spread over its quantile. Variances are to each other as
    // 25 to 1;
    // knowing the wetness leaves the range of the leakage, 0.6 of 2 days, so it takes off nearly all but 1.2 days.
    @Test
    void influences_ofAStraightLaw_areRankedByWhatTheyAreWorth() {
        Odds odds = odds(64, draw -> 20.0 + 10.0 * draw.quantile("wetness") - 2.0 * draw.quantile("leakage"));

        assertEquals(List.of("wetness", "leakage", "idle"), keys(odds));
        Odds.Influence wet = odds.influences().get(0);
        Odds.Influence leak = odds.influences().get(1);
        assertEquals(25.0, wet.share() / leak.share(), 1e-6); // least squares of an exact law
        assertTrue(wet.laterWhenHigh() && !leak.laterWhenHigh());
        double width = Odds.widthDays(odds.members(), END);
        assertEquals(1.2, width - wet.daysOff(), 0.03); // 64 even slices of 2 days: one slice
        assertEquals(0.0, odds.influences().get(2).share(), 1e-12); // rounding of the fit
        assertEquals(1.0, odds.explained(), 1e-9); // rounding of the fit
    }

    // EXACT: a date that depends on the square of an unknown about its middle has no slope, and the curve finds it all
    // the same.
    @Test
    void influence_ofABentLaw_isFound() {
        Odds odds = odds(64, draw -> 10.0 + 40.0 * Math.pow(draw.quantile("leakage") - 0.5, 2.0));

        assertEquals("leakage", odds.influences().get(0).unknown().key());
        assertEquals(1.0, odds.influences().get(0).share(), 1e-6); // least squares of an exact law
    }

    // EXACT: of what two unknowns do only together neither curve may take the credit.
    @Test
    void explained_ofAPureInterplay_isNearNothing() {
        Odds odds =
                odds(128, draw -> 30.0 + 40.0 * (draw.quantile("wetness") - 0.5) * (draw.quantile("leakage") - 0.5));

        assertTrue(odds.explained() < 0.15, "explained: " + odds.explained());
    }

    // EXACT: two unknowns that always lie at the same place are known with each other, so knowing either leaves nothing
    // open; a
    // third that does nothing takes off nothing but what 64 members have by chance.
    @Test
    void influences_ofUnknownsThatHangTogether_countWhatTheyTellOfEachOther() {
        List<EnsembleResult.Member> members = members(64, draw -> 20.0 + 10.0 * draw.quantile("wetness")).stream()
                .map(member -> member.at(tied(member.draw())))
                .toList();

        Odds odds = Odds.of(members, 0, UNKNOWNS, END, Odds.Drawn.TOGETHER);

        double width = Odds.widthDays(odds.members(), END);
        Odds.Influence wet = influence(odds, "wetness");
        Odds.Influence leak = influence(odds, "leakage");
        assertEquals(width, wet.daysOff(), 1e-6);
        assertEquals(width, leak.daysOff(), 1e-6);
        assertEquals(1.0, leak.share(), 1e-9);
        assertTrue(influence(odds, "idle").share() < 0.1);
    }

    private static Draw tied(Draw draw) {
        return new Draw(Map.of(
                "wetness", draw.quantile("wetness"),
                "leakage", draw.quantile("wetness"),
                "idle", draw.quantile("idle")));
    }

    private static Odds.Influence influence(Odds odds, String key) {
        return odds.influences().stream()
                .filter(one -> one.unknown().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    // EXACT: quantiles of an even spread from 10 to 20 days, by definition 6 of Hyndman and Fan on 99 members.
    @Test
    void dates_ofAnEvenSpread_areItsQuantiles() {
        Odds odds = odds(99, draw -> 10.0 + 10.0 * draw.quantile("wetness"));

        double slack = 0.06; // days: half a slice of 10 days in 99
        assertEquals(12.0, days(odds.oneInFive()), slack);
        assertEquals(15.0, days(odds.median()), slack);
        assertEquals(18.0, days(odds.fourInFive()), slack);
        assertEquals(0, odds.notReady());
    }

    // EXACT: one in four members past the end: the 4-in-5 date leans on them and is not guessed.
    @Test
    void dates_pastTheEnd_areLeftOpenAndCounted() {
        Odds odds = odds(16, draw -> draw.quantile("wetness") > 0.75 ? 99.0 : 5.0 + draw.quantile("wetness"));

        assertEquals(4, odds.notReady());
        assertEquals(Optional.empty(), odds.fourInFive());
        assertTrue(odds.median().isPresent());
    }

    // EXACT: 4 members cannot tell 3 unknowns apart.
    @Test
    void influences_ofTooFewMembers_areNotTold() {
        Odds odds = odds(4, draw -> 10.0 + draw.quantile("wetness"));

        assertEquals(List.of(), odds.influences());
        assertEquals(0.0, odds.explained());
    }

    private static List<String> keys(Odds odds) {
        return odds.influences().stream().map(one -> one.unknown().key()).toList();
    }

    private static double days(Optional<Instant> date) {
        return Duration.between(StudyFixture.FROM, date.orElseThrow()).toSeconds() / 86_400.0;
    }
}
