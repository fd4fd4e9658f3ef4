package org.limedry.cli.readings.logger;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;

/** The lines of a text, cut from it one by one as they are asked for. */
final class Lines {
    private final String text;
    private final int count;
    private final int longest;

    private Lines(String text, int count, int longest) {
        this.text = text;
        this.count = count;
        this.longest = longest;
    }

    /** A line with its number, from 1. */
    record Line(int number, String text) {}

    /** Takes each line in turn. */
    @FunctionalInterface
    interface Taker {
        void take(int number, String text);
    }

    static Lines of(String text) {
        int count = 0;
        int longest = 0;
        int length = 0;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            boolean end = letter == '\n' || letter == '\r';
            length = end ? 0 : length + 1;
            longest = Math.max(longest, length);
            if (end && !(letter == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                count++;
            }
        }
        return new Lines(text, length > 0 ? count + 1 : count, longest);
    }

    int count() {
        return count;
    }

    /** Returns how many letters the longest line has. */
    int longest() {
        return longest;
    }

    void forEach(Taker taker) {
        Iterator<String> lines = text.lines().iterator();
        for (int number = 1; lines.hasNext(); number++) {
            taker.take(number, lines.next());
        }
    }

    /** Returns the lines of these numbers. */
    List<Line> of(Set<Integer> numbers) {
        List<Line> some = new ArrayList<>();
        if (!numbers.isEmpty()) {
            forEach((number, line) -> {
                if (numbers.contains(number)) {
                    some.add(new Line(number, line));
                }
            });
        }
        return some;
    }

    /** Returns all lines up to a number, and below it about as many, evenly spread to the end. */
    List<Line> sample(int head) {
        int stride = Math.max(1, (count - 1) / head);
        List<Line> some = new ArrayList<>();
        forEach((number, line) -> {
            if (number <= head || (number - head) % stride == 0) {
                some.add(new Line(number, line));
            }
        });
        return some;
    }
}
