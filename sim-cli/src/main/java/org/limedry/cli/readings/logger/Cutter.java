package org.limedry.cli.readings.logger;

import java.util.List;
import org.limedry.cli.readings.CsvCells;

/** Cuts a line into cells. */
@FunctionalInterface
interface Cutter {
    Row cut(int line, String text);

    /** Returns one that cuts at a sign. */
    static Cutter at(Parting parting) {
        CsvCells cells = new CsvCells(parting.sign());
        return (line, text) -> new Row(line, text, cells.split(text).orElse(List.of()));
    }
}
