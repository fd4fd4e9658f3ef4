package org.limedry.cli.airing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.study.airing.Airing;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringLine;
import org.limedry.study.airing.AiringStudy;
import org.limedry.study.airing.Hardening;
import org.limedry.units.Units;

/** The sentences that console and page share. */
final class AiringText {
    private final AiringAnswer answer;
    private final AiringWords words;

    AiringText(AiringAnswer answer) {
        this.answer = answer;
        this.words = new AiringWords(answer);
    }

    /** Returns the answer in one sentence without a full stop. */
    String headline() {
        return headline(told -> "");
    }

    /** Returns the same with the fresh air that it stands for. */
    String headlineWithAir() {
        return headline(told -> " (" + AiringWords.air(told.freshAir().likelyM3PerS()) + " m\u00b3/h of fresh air, "
                + AiringWords.air(told.freshAir().lowM3PerS()) + " to "
                + AiringWords.air(told.freshAir().highM3PerS()) + ")");
    }

    private String headline(Function<AiringFinding, String> air) {
        if (answer.choice() instanceof AiringStudy.Choice.NoneIsSound) {
            return "At every level tried the lime dries too fast, or dries without hardening";
        }
        AiringFinding told = answer.told().orElseThrow();
        String order = words.order(told) + air.apply(told) + AiringWords.withHeat(told);
        if (answer.choice() instanceof AiringStudy.Choice.TooLate) {
            String by = answer.by()
                    .map(day -> "Not by " + words.days().textWithoutWeekday(day))
                    .orElse("Not in " + words.horizon());
            return answer.isDated() ? by + "; soonest: " + order + ", " + ready(told) : by + " at any level tried";
        }
        return answer.by()
                        .map(day -> "To be ready by " + words.days().textWithoutWeekday(day) + ": " + order)
                        .orElse(Names.capital(order))
                + ": " + ready(told);
    }

    private String ready(AiringFinding told) {
        return "ready in about " + words.wait(told.waiting().likelyDays());
    }

    /** Returns what the answer means in air, for the page. */
    String air() {
        return answer.told()
                .filter(one -> answer.isDated())
                .map(one -> "That is about " + AiringWords.air(one.freshAir())
                        + " m\u00b3 of fresh air an hour, averaged over day and night" + doorTimes(one) + ". ")
                .orElse("");
    }

    private static String doorTimes(AiringFinding one) {
        Airing airing = one.level().airing();
        return airing.doorHours() == 0.0 || airing.doorHours() == Airing.WHOLE_DAY_HOURS
                ? ""
                : "; open from " + AiringWords.times(airing);
    }

    /** Returns what the answer means in dates, and what else was to be had. */
    String dates() {
        Optional<AiringFinding> told = answer.told().filter(one -> answer.isDated());
        return told.map(one -> Names.capital(answer.room().name()) + " ready about "
                                + words.days().table(words.day(one.days())) + range(one) + " ")
                        .orElse("")
                + comparison(told);
    }

    private String range(AiringFinding one) {
        return one.waiting().isRanged()
                ? "; range " + words.wait(one.waiting().earliestDays()) + " to "
                        + words.wait(one.waiting().latestDays()) + "."
                : " (likely only; --ranges for ranges).";
    }

    private String comparison(Optional<AiringFinding> told) {
        List<String> parts = new ArrayList<>();
        told.filter(one -> one.level().heat().isPresent())
                .flatMap(one -> answer.study().cold(one))
                .ifPresent(cold ->
                        parts.add("without heat: " + words.wait(cold.waiting().likelyDays())));
        cold().shut()
                .ifPresent(shut ->
                        parts.add("shut and cold: " + words.wait(shut.waiting().likelyDays())));
        parts.add("as the file has it: " + words.wait(answer.asTold().waiting().likelyDays()));
        return Names.capital(String.join("; ", parts)) + ".";
    }

    private AiringLine cold() {
        return answer.study().lines().get(0);
    }

    /** Returns the line of the level that is told, or the last. */
    AiringLine mainLine() {
        List<AiringLine> lines = answer.study().lines();
        return lines.stream()
                .filter(line -> answer.told()
                        .map(one -> one.level().heat().equals(line.heat()))
                        .orElse(false))
                .findFirst()
                .orElse(lines.get(lines.size() - 1));
    }

    /** Returns the levels that stand out, a sentence each. */
    List<String> marks() {
        List<String> marks = new ArrayList<>();
        marks.add(nothing() + " " + tooFast());
        slower().ifPresent(marks::add);
        answer.study().heatSetback().ifPresent(pair -> marks.add(heatSetback(pair)));
        answer.dryDays().ifPresent(dry -> marks.add(wetDays(dry)));
        return marks;
    }

    private String nothing() {
        OptionalDouble from = nothingUntilM3PerS();
        return from.isPresent()
                ? "Does nothing: under about " + AiringWords.air(from.getAsDouble()) + " m\u00b3 an hour."
                : "Does nothing: airing, at any level tried; the dates stay those of the shut room.";
    }

    /** Returns the fresh air below which no line leaves the dates of its shut room. */
    OptionalDouble nothingUntilM3PerS() {
        return answer.study().lines().stream()
                .flatMapToDouble(line -> line.worksFromM3PerS().stream())
                .min();
    }

    private String tooFast() {
        List<String> found = answer.study().lines().stream()
                .filter(line -> line.tooFastFromM3PerS().isPresent())
                .map(line -> "from " + AiringWords.air(line.tooFastFromM3PerS().orElseThrow()) + " m\u00b3 an hour ("
                        + AiringWords.heat(line) + ")")
                .toList();
        return found.isEmpty()
                ? "Too fast: none of these."
                : "Too fast: " + AiringWords.listed(found) + " (marked !). Mist, screen, turn down.";
    }

    private Optional<String> slower() {
        return answer.study().lines().stream()
                .flatMap(line -> line.setback().stream().map(setback -> slower(line, setback)))
                .findFirst();
    }

    private String slower(AiringLine line, AiringLine.Setback setback) {
        String cause = setback.isByCold()
                ? "more air cools the stone"
                : setback.more().water().outByAirKg() < 0.0
                        ? "mild damp air brought "
                                + Figures.litres(-setback.more().water().outByAirKg()) + " litres in"
                        : "damp air holds the wall wet";
        return "More air, slower (" + AiringWords.heat(line) + "): "
                + words.level(setback.more().level().airing())
                + ", " + words.wait(setback.more().waiting().likelyDays()) + "; "
                + words.level(setback.less().level().airing()) + ", "
                + words.wait(setback.less().waiting().likelyDays()) + ": " + cause + ".";
    }

    private String heatSetback(AiringStudy.HeatSetback pair) {
        return "Heat without air makes it worse: "
                + words.level(pair.heated().level().airing())
                + AiringWords.withHeat(pair.heated()) + ", "
                + words.wait(pair.heated().waiting().likelyDays()) + "; cold, "
                + words.wait(pair.cold().waiting().likelyDays()) + ". On the way "
                + Figures.litres(pair.heated().water().condensedKg()) + " litres condensed on cold faces (cold room: "
                + Figures.litres(pair.cold().water().condensedKg()) + ").";
    }

    private String wetDays(AiringAnswer.DryDays dry) {
        AiringFinding daily = ((AiringStudy.Choice.Do) answer.choice()).finding();
        double gained = daily.days() - dry.finding().days();
        String gain = Math.abs(gained) < 1.0 || Double.isNaN(gained)
                ? "no difference to the date"
                : gained > 0.0 ? wait(gained) + " sooner" : wait(-gained) + " later";
        return "Wet days: on " + Figures.count(dry.wetDays(), "day")
                + " of the wait the dew point outside was at or above " + "the coldest plastered wall; shut then: "
                + gain + ".";
    }

    private String wait(double days) {
        return AiringWords.wait(days);
    }

    /** Returns what hardening needs and gets at the level of the answer, and what a machine in a shut room does. */
    List<String> hardening() {
        List<String> lines = new ArrayList<>();
        answer.told().map(this::hardening).ifPresent(lines::add);
        softLine().ifPresent(lines::add);
        return lines;
    }

    private String hardening(AiringFinding one) {
        return "Air to harden: " + AiringWords.air(one.hardening().needM3PerS()) + " m\u00b3 an hour needed, "
                + AiringWords.air(one.freshAir().likelyM3PerS()) + " given" + when(one) + ": " + pace(one.hardening())
                + ".";
    }

    private static String when(AiringFinding one) {
        return doorTimes(one).isEmpty() ? "" : ", most of it while the doors stand open";
    }

    /** Returns what hardening takes in the end. */
    String wholeHardening() {
        return "Hard right through takes " + Figures.whole(answer.building().wholeCarbonDioxideKg())
                + " kg of carbon dioxide: all there is in "
                + Figures.whole(thousands(answer.building().wholeAirM3()))
                + " m\u00b3 of outdoor air, over months. Only the outer millimetres need theirs before the next coat.";
    }

    private static double thousands(double m3) {
        return 1000.0 * Math.round(m3 / 1000.0);
    }

    private String pace(Hardening hard) {
        return pacePercent(hard) + " % of the pace in open air, lowest " + Figures.whole(hard.lowestPpm())
                + " ppm of CO\u2082";
    }

    String pacePercent(Hardening hard) {
        return Figures.whole(
                Units.percentFromFraction(hard.pace(answer.building().outdoorPpm())));
    }

    private Optional<String> softLine() {
        return answer.study().lines().stream()
                .flatMap(line -> line.shut().stream())
                .filter(shut -> shut.watch().dryButSoft() || shut.water().dehumidifierKg() > 0.0)
                .findFirst()
                .map(shut -> "Shut with the dehumidifier, "
                        + words.wait(shut.waiting().likelyDays()) + ", is dry but not hard: " + pace(shut.hardening())
                        + ". Open up daily.");
    }
}
