package org.limedry.cli.verify;

import java.util.Map;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.PlotsChart;
import org.limedry.cli.chart.Size;

/** Where the charts of the pages lie. */
final class ChartFiles {
    private static final String FOLDER = "charts/";

    private ChartFiles() {}

    static String wide(String name) {
        return FOLDER + name + ".svg";
    }

    static String narrow(String name) {
        return FOLDER + name + "-narrow.svg";
    }

    /** Adds both sizes of a chart to the files of a page. */
    static void put(PlotsChart chart, Map<String, String> files) {
        files.put(wide(chart.id()), Charts.svgFile(chart, Size.WIDE));
        files.put(narrow(chart.id()), Charts.svgFile(chart, Size.NARROW));
    }
}
