package org.limedry.cli.airing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.cli.page.Ascii;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringLine;

/** The answer on the console. */
final class AiringConsole {
    private static final int NAME_COLUMNS = 30;
    private static final int RANGE_COLUMNS = 22;
    private static final int AIR_COLUMNS = 7;

    /** With more heats than this there is no room for ranges of air. */
    private static final int MOST_ROOMY_LINES = 2;

    private final AiringAnswer answer;
    private final AiringWords words;
    private final AiringText text;

    private AiringConsole(AiringAnswer answer) {
        this.answer = answer;
        this.words = new AiringWords(answer);
        this.text = new AiringText(answer);
    }

    /** Returns the answer in lines of any length, the answer itself first. */
    static List<String> lines(AiringAnswer answer) {
        return new AiringConsole(answer).lines();
    }

    /** Returns what was taken out of the room and what stays. */
    static List<String> plant(AiringAnswer answer) {
        return new AiringWords(answer).plant();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(text.headlineWithAir() + ".");
        lines.add(text.dates());
        lines.addAll(table());
        lines.addAll(text.marks());
        lines.addAll(text.hardening());
        lines.addAll(words.plant());
        return AiringPage.situation(answer).around(lines);
    }

    private List<String> table() {
        List<AiringLine> lines = answer.study().lines();
        boolean roomy = lines.size() <= MOST_ROOMY_LINES;
        int airColumns = roomy ? RANGE_COLUMNS : AIR_COLUMNS;
        int waitColumns = (Ascii.COLUMNS - NAME_COLUMNS - airColumns) / lines.size();
        List<String> rows = new ArrayList<>();
        rows.add(Ascii.cell(answer.room().name(), NAME_COLUMNS)
                + Ascii.cell(roomy ? "m3/h (low to high)" : "m3/h", airColumns)
                + cells(lines, waitColumns, line -> head(line, roomy)));
        for (AiringFinding like : text.mainLine().levels()) {
            String air = roomy
                    ? AiringWords.air(like.freshAir())
                    : AiringWords.air(like.freshAir().likelyM3PerS());
            rows.add(Ascii.cell(words.level(like.level().airing()), NAME_COLUMNS)
                    + Ascii.cell(air, airColumns)
                    + cells(
                            lines,
                            waitColumns,
                            line -> roomy ? wait(line, like) : wait(line, like).replace(" weeks", " wk")));
        }
        return rows;
    }

    private static String head(AiringLine line, boolean roomy) {
        return roomy
                ? AiringWords.heat(line).replace(" held at", ",")
                : line.heat().map(heat -> AiringWords.kw(heat) + " kW").orElse("no heat");
    }

    private static String cells(List<AiringLine> lines, int columns, Function<AiringLine, String> cell) {
        return lines.stream()
                .map(line -> Ascii.cell(cell.apply(line), columns))
                .collect(Collectors.joining())
                .stripTrailing();
    }

    private String wait(AiringLine line, AiringFinding like) {
        return line.levels().stream()
                .filter(one -> one.level().airing().equals(like.level().airing()))
                .map(one -> Double.isFinite(one.days())
                        ? AiringWords.wait(one.days()) + (one.watch().tooFast() ? "!" : "")
                        : "> " + words.horizon())
                .findFirst()
                .orElse("");
    }
}
