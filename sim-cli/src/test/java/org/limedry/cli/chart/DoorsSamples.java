package org.limedry.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.limedry.cli.chart.DoorsChart.Block;
import org.limedry.cli.chart.DoorsChart.Day;
import org.limedry.cli.chart.DoorsChart.Word;

/** Plans for doors, invented. */
final class DoorsSamples {
    private static final int FIRST = 6;
    private static final int LAST = 20;
    private static final List<String> WEEKDAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

    private static final List<Word> WORDS = List.of(Word.values());

    private DoorsSamples() {}

    static DoorsChart week() {
        return new DoorsChart(
                "doors",
                "Doors: open Mon; shut Thu",
                FIRST,
                LAST,
                List.of(
                        day(
                                "Mon",
                                "SHUT + cover",
                                "Too close to tell until 9, then drier out than in.",
                                new Block(6, 9, Word.NO_DIFFERENCE),
                                new Block(9, 20, Word.OPEN)),
                        day(
                                "Thu",
                                "SHUT",
                                "Mild wet air, cold walls: open doors put 6 litres ON them.",
                                new Block(6, 20, Word.SHUT)),
                        day(
                                "Sun",
                                "SHUT + cover, heater off",
                                "Open as shown; else mild wet air puts 1,234 litres on walls.",
                                new Block(6, 8, Word.SHUT),
                                new Block(8, 10, Word.OPEN),
                                new Block(10, 12, Word.NO_DIFFERENCE),
                                new Block(12, 13, Word.OPEN),
                                new Block(13, 14, Word.SHUT),
                                new Block(14, 20, Word.OPEN))));
    }

    static DoorsChart random(Random random, String words) {
        List<Day> days = new ArrayList<>();
        int count = 1 + random.nextInt(7);
        for (int i = 0; i < count; i++) {
            List<Block> blocks = new ArrayList<>();
            int hour = FIRST;
            while (hour < LAST) {
                int end = Math.min(LAST, hour + 1 + random.nextInt(14));
                blocks.add(new Block(hour, end, WORDS.get(random.nextInt(WORDS.size()))));
                hour = end;
            }
            String night = random.nextBoolean() ? "SHUT + cover, heater off" : "OPEN";
            days.add(new Day(WEEKDAYS.get(i), 10 + i + " Nov", blocks, night, words));
        }
        return new DoorsChart("doors", words, FIRST, LAST, days);
    }

    private static Day day(String weekday, String night, String why, Block... blocks) {
        return new Day(weekday, "16 Nov", List.of(blocks), night, why);
    }
}
