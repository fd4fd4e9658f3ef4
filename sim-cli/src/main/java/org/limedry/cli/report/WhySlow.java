package org.limedry.cli.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.lime.ReadinessRule;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Warning;
import org.limedry.simulation.WaterAccount;

/**
 * The sentence that says why a coat is slow, from the hours of its own wait.
 *
 * <p>Each cause is measured in hours of the wait; the one with most hours comes first, and at most two are named.
 */
final class WhySlow {
    /** A wait of up to a week is what the trade allows a coat when all goes well: then nothing is called slow. */
    static final double NOT_SLOW_DAYS = 7.0;

    /** A cause is named if it held for this share of the wait or more. */
    private static final double NAMED_SHARE = 0.25;

    private static final double MOSTLY = 0.6;

    private final Findings findings;
    private final Waiting wait;
    private final String wallName;
    private final String airName;

    private WhySlow(Findings findings, Waiting wait) {
        this.findings = findings;
        this.wait = wait;
        this.wallName = findings.words(wait.wall().name());
        this.airName = findings.scenario().rooms().size() == 1
                ? "the room air"
                : "the air of the " + wait.room().room();
    }

    /**
     * A cause.
     *
     * @param hours how much of the wait it accounts for, hours
     * @param head what follows "slow because"
     * @param tail what may follow that when no other cause does; may be empty
     */
    private record Cause(double hours, String head, String tail) {}

    /**
     * Why, in one sentence.
     *
     * @param full with up to two causes
     * @param brief with the first of them only
     */
    record Sentence(String full, String brief) {
        private static Sentence of(String only) {
            return new Sentence(only, only);
        }
    }

    /** Returns why a coat that was laid is slow, or that it is not. */
    static Sentence of(Findings findings, Coat coat) {
        Waiting wait = Waiting.of(findings, coat);
        return new WhySlow(findings, wait).sentence();
    }

    private Sentence sentence() {
        boolean slow = wait.coat().isUnready() || wait.days() > NOT_SLOW_DAYS;
        Optional<Warning> tooFast = warning(Warning.Kind.TOO_FAST, wait.wall().name());
        if (!slow) {
            return Sentence.of(tooFast.map(this::tooFast).orElseGet(() -> "Drying as it should: " + progress()));
        }
        List<Cause> causes = Stream.of(
                        belowDewPoint(), airFull(), wetWall(), cold(), outsideWet(), unflued(), heatShutIn())
                .flatMap(Optional::stream)
                .filter(cause -> cause.hours() >= NAMED_SHARE * wait.hours())
                .sorted(Comparator.comparingDouble(Cause::hours).reversed())
                .limit(2)
                .toList();
        if (causes.isEmpty()) {
            return Sentence.of("Slow, and no one cause stands out: " + progress());
        }
        String first = "Slow because " + causes.get(0).head();
        String alone = first + causes.get(0).tail() + ".";
        return causes.size() == 1
                ? Sentence.of(alone)
                : new Sentence(first + ", and because " + causes.get(1).head() + ".", alone);
    }

    private String progress() {
        int wet = wait.count(wait::isAtDewPoint);
        return "%s litres left the coat in %s, %s."
                .formatted(
                        Figures.litres(wait.lostLitres()),
                        Figures.count(wait.days(), "day"),
                        wet == 0 ? "no wet hours" : Figures.count(wet, "wet hour"));
    }

    private String tooFast(Warning warning) {
        Days days = findings.days();
        return "Too fast: from %s to %s the %s lost more than lime can give, up to %s litres a m\u00b2 an hour; mist and screen."
                .formatted(
                        days.brief(days.date(warning.from())),
                        days.brief(days.lastDay(warning.until())),
                        wallName,
                        Figures.plain(warning.value()));
    }

    private Optional<Cause> airFull() {
        int full = wait.count(wait::isAirFull);
        double doors = wait.sum(hour -> wait.room().openShare().at(hour)) / wait.days();
        String tail = doors < 0.05 ? ", with the doors shut" : ", with the doors open " + doorHours(doors) + " a day";
        return Optional.of(new Cause(
                full, "%s was full for %s and could take up hardly any more".formatted(airName, ofAll(full)), tail));
    }

    private static String doorHours(double hours) {
        return hours == Math.rint(hours) ? Figures.count(hours, "hour") : Figures.oneDecimal(hours) + " hours";
    }

    private Optional<Cause> belowDewPoint() {
        int wet = wait.count(wait::isAtDewPoint);
        double suckedBack = findings.outcome().faces().stream()
                .filter(face -> face.wall().equals(wait.face().wall())
                        && face.room().equals(wait.face().room()))
                .mapToDouble(Outcome.FaceResult::suckedBackKg)
                .sum();
        boolean atNight = wait.countAtNight(wait::isAtDewPoint, findings.days()) >= MOSTLY * wet;
        String tail = suckedBack < 0.5
                ? ""
                : atNight
                        ? ": what left by day was sucked back by night"
                        : ": " + Figures.litres(suckedBack) + " litres that had left were sucked back";
        String head = "the %s was colder than the dew point of %s for %s".formatted(wallName, airName, ofAll(wet));
        return Optional.of(new Cause(wet, head, tail));
    }

    private Optional<Cause> wetWall() {
        double dried = wait.driedLitres();
        double fed = dried - wait.lostLitres();
        if (wait.coat().plan().number() > 1 || fed < 0.5) {
            return Optional.empty();
        }
        return Optional.of(new Cause(
                wait.hours() * fed / dried,
                "the %s is wet itself: it fed %s litres into the coat while %s litres left it"
                        .formatted(wallName, Figures.litres(fed), Figures.litres(dried)),
                ""));
    }

    private Optional<Cause> cold() {
        History.CoatHours coat =
                findings.outcome().history().coats().get(wait.coat().index());
        double ruleDays = rule().equivalentAgeDays().orElse(0.0);
        double mean = wait.hours() == 0
                ? 0.0
                : wait.mean(hour -> wait.face().celsius().at(hour));
        int firming = wait.count(hour -> coat.equivalentAgeDays().at(hour) < ruleDays);
        double lost = firming - ruleDays * 24.0;
        if (lost <= 0.0 || mean >= 20.0) {
            return Optional.empty();
        }
        String took = firming < wait.hours()
                ? "took " + Figures.count(firming / 24.0, "day")
                : "was not done in " + Figures.count(firming / 24.0, "day");
        return Optional.of(new Cause(
                lost,
                "it was cold: the wall stood at %s \u00b0C on average, and firming that takes %s at 20 \u00b0C %s"
                        .formatted(Figures.whole(mean), Figures.plain(ruleDays) + " days", took),
                ""));
    }

    private ReadinessRule rule() {
        return findings.scenario().rule();
    }

    private Optional<Cause> outsideWet() {
        OutsideAir outside = OutsideAir.of(wait, findings.days());
        return Optional.of(new Cause(
                outside.noHelpDays() * 24.0,
                "the air outside was no drier than the air inside on %s of %s days"
                        .formatted(Figures.whole(outside.noHelpDays()), Figures.whole(outside.days())),
                "; only heat or a machine helps then"));
    }

    private Optional<Cause> unflued() {
        WaterAccount account = findings.roomAccount(wait.room().room());
        double left = Math.max(0.0, account.outByAirKg()) + account.dehumidifierKg();
        if (account.plantAddedKg() <= left) {
            return Optional.empty();
        }
        return Optional.of(new Cause(
                heatedHours(),
                "the heater burnt %s litres of water into the room, more than the %s litres that left"
                        .formatted(Figures.litres(account.plantAddedKg()), Figures.litres(left)),
                ""));
    }

    private Optional<Cause> heatShutIn() {
        return warning(Warning.Kind.HEAT_WITHOUT_AIR, wait.room().room())
                .map(warning -> new Cause(
                        heatedHours(),
                        "heat drove water into the air and too little air let it out: %s litres went back into cold faces"
                                .formatted(Figures.litres(warning.value())),
                        ""));
    }

    private double heatedHours() {
        return wait.count(hour -> wait.room().heaterWatts().at(hour) > 0.0);
    }

    private Optional<Warning> warning(Warning.Kind kind, String subject) {
        return findings.warnings().stream()
                .map(WarningGroup::warning)
                .filter(warning -> warning.kind() == kind && warning.subject().equals(subject))
                .findFirst();
    }

    private String ofAll(int hours) {
        return "%s of %s".formatted(Figures.count(hours, "hour"), Figures.whole(wait.hours()));
    }
}
