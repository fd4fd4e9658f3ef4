package org.limedry.cli.airing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.limedry.cli.page.Ascii;
import org.limedry.cli.page.Caution;
import org.limedry.study.AiringFinding;
import org.limedry.study.AiringLine;

/** The answer on the console. */
public final class AiringConsole {
    private static final int NAME_COLUMNS = 30;
    private static final int AIR_COLUMNS = 22;

    private final AiringAnswer answer;
    private final AiringWords words;
    private final AiringText text;

    private AiringConsole(AiringAnswer answer) {
        this.answer = answer;
        this.words = new AiringWords(answer);
        this.text = new AiringText(answer);
    }

    /** Returns the answer in lines of any length, the answer itself first. */
    public static List<String> lines(AiringAnswer answer) {
        return new AiringConsole(answer).lines();
    }

    /** Returns what was taken out of the room and what stays. */
    public static List<String> plant(AiringAnswer answer) {
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
        lines.add(AiringPage.cautions(answer).stream()
                .map(Caution::brief)
                .collect(Collectors.joining(" ", "Care: ", "")));
        return lines;
    }

    private List<String> table() {
        List<AiringLine> lines = answer.study().lines();
        int waitColumns = (Ascii.COLUMNS - NAME_COLUMNS - AIR_COLUMNS) / lines.size();
        List<String> rows = new ArrayList<>();
        rows.add(Ascii.cell(answer.room().name(), NAME_COLUMNS) + Ascii.cell("m3/h (low to high)", AIR_COLUMNS)
                + lines.stream()
                        .map(line -> Ascii.cell(AiringWords.heat(line).replace(" held at", ","), waitColumns))
                        .collect(Collectors.joining()));
        for (AiringFinding first : text.mainLine().levels()) {
            rows.add(Ascii.cell(words.level(first.level().airing()), NAME_COLUMNS)
                    + Ascii.cell(AiringWords.air(first.freshAir()), AIR_COLUMNS)
                    + lines.stream()
                            .map(line -> Ascii.cell(cell(line, first), waitColumns))
                            .collect(Collectors.joining()));
        }
        return rows;
    }

    private String cell(AiringLine line, AiringFinding like) {
        return line.levels().stream()
                .filter(one -> one.level().airing().equals(like.level().airing()))
                .map(one -> words.wait(one.waiting().likelyDays()))
                .findFirst()
                .orElse("");
    }
}
