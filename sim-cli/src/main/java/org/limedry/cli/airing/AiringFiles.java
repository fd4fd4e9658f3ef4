package org.limedry.cli.airing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.limedry.cli.chart.AiringChart;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Page;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringLine;
import org.limedry.study.airing.AiringStudy;
import org.limedry.study.airing.SteadyHeat;
import org.limedry.units.Units;

/** The answer as files. */
final class AiringFiles {
    private static final String NAME = "airing";
    private final AiringAnswer answer;
    private final AiringWords words;
    private final AiringText text;

    private AiringFiles(AiringAnswer answer) {
        this.answer = answer;
        this.words = new AiringWords(answer);
        this.text = new AiringText(answer);
    }

    /**
     * Returns the files of an answer.
     *
     * @param answer what was found
     * @param foot what the page rests on
     */
    static Bundle of(AiringAnswer answer, Page.Foot foot) {
        AiringChart chart = AiringDrawing.of(answer);
        AiringFiles files = new AiringFiles(answer);
        return new Bundle()
                .page(NAME, AiringPage.of(answer, chart, foot))
                .chart(NAME, chart)
                .csv(NAME, files.columns().csv(files.findings()))
                .json(NAME, files.json());
    }

    private List<AiringFinding> findings() {
        return Stream.concat(
                        answer.study().lines().stream().flatMap(line -> line.levels().stream()),
                        answer.dryDays().stream().map(AiringAnswer.DryDays::finding))
                .toList();
    }

    private Columns<AiringFinding> columns() {
        return Columns.<AiringFinding>of()
                .key("doorHours", one -> one.level().airing().doorHours())
                .key("fanM3PerHour", one -> perHour(one.level().airing().fanM3PerS()))
                .key("heatKw", one -> kw(one.level().heat()))
                .key("holdsCelsius", one -> one.level().heat().map(SteadyHeat::holdsCelsius))
                .key("shutDays", one -> one.level().shutDays().size())
                .key("freshAirLowM3PerHour", one -> perHour(one.freshAir().lowM3PerS()))
                .key("freshAirLikelyM3PerHour", one -> perHour(one.freshAir().likelyM3PerS()))
                .key("freshAirHighM3PerHour", one -> perHour(one.freshAir().highM3PerS()))
                .key("earliestDays", one -> one.waiting().earliestDays())
                .key("likelyDays", one -> one.waiting().likelyDays())
                .key("latestDays", one -> one.waiting().latestDays())
                .key("likelyDate", one -> likelyDate(one.waiting().likelyDays()))
                .key("hardeningNeedM3PerHour", one -> perHour(one.hardening().needM3PerS()))
                .key("carbonDioxideTakenKg", one -> one.hardening().takenKg())
                .key("lowestPpm", one -> one.hardening().lowestPpm())
                .key("meanPpm", one -> one.hardening().meanPpm())
                .key("tooFast", one -> one.watch().tooFast())
                .key("dryButSoft", one -> one.watch().dryButSoft())
                .key("wallCelsius", AiringFinding::wallCelsius)
                .key("outByAirLitres", one -> one.water().outByAirKg())
                .key("condensedLitres", one -> one.water().condensedKg())
                .key("dehumidifierLitres", one -> one.water().dehumidifierKg())
                .key("heatKwh", AiringFinding::heatKwh);
    }

    private Optional<LocalDate> likelyDate(OptionalDouble days) {
        return days.isPresent() ? Optional.of(words.day(days.getAsDouble())) : Optional.empty();
    }

    private static double kw(Optional<SteadyHeat> heat) {
        return heat.map(SteadyHeat::watts).orElse(0.0) / Units.wattsFromKw(1.0);
    }

    private static double perHour(double m3PerS) {
        return m3PerS * Units.SECONDS_PER_HOUR;
    }

    private ObjectNode json() {
        ObjectNode root = JsonText.object();
        root.put("site", answer.site().name());
        root.put("room", answer.room().name());
        root.put("withoutPlant", answer.room().bare());
        root.put("firstLaid", words.day(0.0).toString());
        JsonText.put(root, "by", answer.by());
        root.put("horizonDays", answer.study().horizonDays());
        root.put("answer", text.headline());
        root.put("inTime", answer.choice() instanceof AiringStudy.Choice.Do);
        JsonText.put(root, "told", answer.told().map(columns()::json));
        JsonText.put(
                root.putObject("asTheFileHasIt"),
                "likelyDays",
                answer.asTold().waiting().likelyDays());
        root.put("wholeCarbonDioxideKg", answer.building().wholeCarbonDioxideKg());
        root.put("wholeAirM3", answer.building().wholeAirM3());
        marks(root.putObject("marks"));
        JsonText.putCautions(root, AiringPage.situation(answer));
        root.set("levels", columns().json(findings()));
        return root;
    }

    private void marks(ObjectNode marks) {
        JsonText.put(marks, "nothingBelowM3PerHour", perHour(text.nothingUntilM3PerS()));
        ArrayNode lines = marks.putArray("lines");
        for (AiringLine line : answer.study().lines()) {
            ObjectNode one = lines.addObject();
            one.put("heatKw", kw(line.heat()));
            JsonText.put(one, "worksFromM3PerHour", perHour(line.worksFromM3PerS()));
            JsonText.put(one, "tooFastFromM3PerHour", perHour(line.tooFastFromM3PerS()));
            JsonText.put(
                    one,
                    "moreAirIsSlowerAtM3PerHour",
                    line.setback()
                            .map(setback -> perHour(setback.more().freshAir().likelyM3PerS())));
        }
        marks.put("heatMakesItWorse", answer.study().heatSetback().isPresent());
        JsonText.put(marks, "wetDays", answer.dryDays().map(AiringAnswer.DryDays::wetDays));
    }

    private static OptionalDouble perHour(OptionalDouble m3PerS) {
        return m3PerS.isPresent() ? OptionalDouble.of(perHour(m3PerS.getAsDouble())) : m3PerS;
    }
}
