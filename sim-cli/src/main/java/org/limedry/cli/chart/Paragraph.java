package org.limedry.cli.chart;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A few lines of text under each other. */
record Paragraph(List<Text> lines) {
    private static final double PITCH_SIZES = 1.2;

    Paragraph {
        lines = List.copyOf(lines);
    }

    static Paragraph of(Text text) {
        return new Paragraph(List.of(text));
    }

    /** Returns the text broken at the space that makes its two lines narrowest, if it has a space. */
    static Optional<Paragraph> inTwo(Text text) {
        String words = text.words();
        return words.chars().filter(c -> c == ' ').findAny().isEmpty()
                ? Optional.empty()
                : spaces(words)
                        .map(space -> new Paragraph(
                                List.of(text.with(words.substring(0, space)), text.with(words.substring(space + 1)))))
                        .min((a, b) -> Double.compare(a.widthPx(), b.widthPx()));
    }

    private static Stream<Integer> spaces(String words) {
        return Stream.iterate(words.indexOf(' '), at -> at >= 0, at -> words.indexOf(' ', at + 1));
    }

    /** Returns the text in as few lines as fit the width; a word wider than that is cut. */
    static Paragraph wrapped(Text text, double widthPx) {
        List<Text> lines = new ArrayList<>();
        String line = "";
        for (String word : text.words().split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && text.with(longer).widthPx() > widthPx) {
                lines.add(text.with(line).cutTo(widthPx));
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(text.with(line).cutTo(widthPx));
        return new Paragraph(lines);
    }

    /** Returns the ways to set a text: in one line, or else in two. */
    static List<Paragraph> oneLineOrTwo(Text text) {
        return Stream.concat(Stream.of(of(text)), inTwo(text).stream()).toList();
    }

    double widthPx() {
        return lines.stream().mapToDouble(Text::widthPx).max().orElse(0);
    }

    /** Returns the room it takes with its top left corner at the given place. */
    Rectangle2D boxAt(double left, double top) {
        return new Rectangle2D.Double(left, top, widthPx(), heightPx());
    }

    double pitchPx() {
        return Math.ceil(lines.get(0).sizePx() * PITCH_SIZES);
    }

    double heightPx() {
        return (lines.size() - 1) * pitchPx() + lines.get(0).heightPx();
    }
}
