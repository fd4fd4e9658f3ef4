package org.limedry.cli.readings.logger;

import java.util.List;

/**
 * One line of a file.
 *
 * @param line its number, from 1
 * @param text as it stands
 * @param cells its cells; none for a line that cannot be split
 */
record Row(int line, String text, List<String> cells) {
    String cell(int index) {
        return index < cells.size() ? cells.get(index) : "";
    }

    boolean isBlank() {
        for (String cell : cells) {
            if (!cell.isEmpty()) {
                return false;
            }
        }
        return text.chars().noneMatch(Character::isLetterOrDigit);
    }

    long numbers() {
        return cells.stream().filter(cell -> Figure.of(cell).isPresent()).count();
    }

    /** Returns whether one of its cells is a date, or a date with a time. */
    boolean hasDate() {
        return cells.stream()
                .anyMatch(cell -> Stamp.of(cell).isPresent() || Stamp.date(cell).isPresent());
    }

    boolean looksLikeReading() {
        return hasDate() && numbers() > 0;
    }
}
