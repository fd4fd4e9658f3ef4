package org.limedry.cli.airing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.limedry.cli.chart.AiringChart;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Page;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringLine;
import org.limedry.study.airing.AiringStudy;
import org.limedry.study.airing.SteadyHeat;
import org.limedry.units.Units;

/** The answer as files. */
public final class AiringFiles {
    private static final String NAME = "airing";
    private static final List<String> HEADINGS = List.of(
            "doorHours",
            "fanM3PerHour",
            "heatKw",
            "holdsCelsius",
            "shutDays",
            "freshAirLowM3PerHour",
            "freshAirLikelyM3PerHour",
            "freshAirHighM3PerHour",
            "earliestDays",
            "likelyDays",
            "latestDays",
            "likelyDate",
            "hardeningNeedM3PerHour",
            "carbonDioxideTakenKg",
            "lowestPpm",
            "meanPpm",
            "tooFast",
            "dryButSoft",
            "wallCelsius",
            "outByAirLitres",
            "condensedLitres",
            "dehumidifierLitres",
            "heatKwh");

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
    public static Bundle of(AiringAnswer answer, Page.Foot foot) {
        AiringChart chart = AiringDrawing.of(answer);
        AiringFiles files = new AiringFiles(answer);
        return new Bundle()
                .page(NAME, AiringPage.of(answer, chart, foot))
                .chart(NAME, chart)
                .csv(NAME, files.csv())
                .json(NAME, files.json());
    }

    private CsvSheet csv() {
        return new CsvSheet(HEADINGS, findings().<List<?>>map(this::cells).toList());
    }

    private Stream<AiringFinding> findings() {
        return Stream.concat(
                answer.study().lines().stream().flatMap(line -> line.levels().stream()),
                answer.dryDays().stream().map(AiringAnswer.DryDays::finding));
    }

    private List<Object> cells(AiringFinding one) {
        List<Object> cells = new ArrayList<>();
        Optional<SteadyHeat> heat = one.level().heat();
        cells.add(one.level().airing().doorHours());
        cells.add(perHour(one.level().airing().fanM3PerS()));
        cells.add(heat.map(SteadyHeat::watts).orElse(0.0) / Units.wattsFromKw(1.0));
        cells.add(heat.map(SteadyHeat::holdsCelsius));
        cells.add(one.level().shutDays().size());
        cells.add(perHour(one.freshAir().lowM3PerS()));
        cells.add(perHour(one.freshAir().likelyM3PerS()));
        cells.add(perHour(one.freshAir().highM3PerS()));
        cells.add(boxed(one.waiting().earliestDays()));
        cells.add(boxed(one.waiting().likelyDays()));
        cells.add(boxed(one.waiting().latestDays()));
        cells.add(boxed(one.waiting().likelyDays()).map(words::day));
        Collections.addAll(
                cells,
                perHour(one.hardening().needM3PerS()),
                one.hardening().takenKg(),
                one.hardening().lowestPpm(),
                one.hardening().meanPpm(),
                one.watch().tooFast(),
                one.watch().dryButSoft(),
                one.wallCelsius(),
                one.water().outByAirKg(),
                one.water().condensedKg(),
                one.water().dehumidifierKg(),
                one.heatKwh());
        return cells;
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
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
        answer.by().ifPresentOrElse(day -> root.put("by", day.toString()), () -> root.putNull("by"));
        root.put("horizonDays", answer.study().horizonDays());
        root.put("answer", text.headline());
        root.put("inTime", answer.choice() instanceof AiringStudy.Choice.Do);
        answer.told().ifPresentOrElse(told -> put(root.putObject("told"), told), () -> root.putNull("told"));
        put(
                root.putObject("asTheFileHasIt"),
                "likelyDays",
                answer.asTold().waiting().likelyDays());
        root.put("wholeCarbonDioxideKg", answer.building().wholeCarbonDioxideKg());
        root.put("wholeAirM3", answer.building().wholeAirM3());
        marks(root.putObject("marks"));
        JsonText.putCautions(root, AiringPage.situation(answer));
        ArrayNode levels = root.putArray("levels");
        findings().forEach(one -> put(levels.addObject(), one));
        return root;
    }

    private void marks(ObjectNode marks) {
        put(marks, "nothingBelowM3PerHour", perHour(text.nothingUntilM3PerS()));
        ArrayNode lines = marks.putArray("lines");
        for (AiringLine line : answer.study().lines()) {
            ObjectNode one = lines.addObject();
            one.put("heatKw", line.heat().map(SteadyHeat::watts).orElse(0.0) / Units.wattsFromKw(1.0));
            put(one, "worksFromM3PerHour", perHour(line.worksFromM3PerS()));
            put(one, "tooFastFromM3PerHour", perHour(line.tooFastFromM3PerS()));
            put(
                    one,
                    "moreAirIsSlowerAtM3PerHour",
                    line.setback()
                            .map(setback -> OptionalDouble.of(
                                    perHour(setback.more().freshAir().likelyM3PerS())))
                            .orElse(OptionalDouble.empty()));
        }
        marks.put("heatMakesItWorse", answer.study().heatSetback().isPresent());
        answer.dryDays().ifPresent(dry -> marks.put("wetDays", dry.wetDays()));
    }

    private static OptionalDouble perHour(OptionalDouble m3PerS) {
        return m3PerS.isPresent() ? OptionalDouble.of(perHour(m3PerS.getAsDouble())) : m3PerS;
    }

    private static void put(ObjectNode node, String key, OptionalDouble value) {
        if (value.isPresent()) {
            node.put(key, value.getAsDouble());
        } else {
            node.putNull(key);
        }
    }

    private void put(ObjectNode node, AiringFinding one) {
        List<Object> cells = cells(one);
        for (int i = 0; i < cells.size(); i++) {
            Object cell = cells.get(i) instanceof Optional<?> maybe
                    ? maybe.map(Object.class::cast).orElse("")
                    : cells.get(i);
            String key = HEADINGS.get(i);
            if (cell instanceof Number number) {
                node.put(key, number.doubleValue());
            } else if (cell instanceof Boolean truth) {
                node.put(key, truth);
            } else if (cell.toString().isEmpty()) {
                node.putNull(key);
            } else {
                node.put(key, cell.toString());
            }
        }
    }
}
