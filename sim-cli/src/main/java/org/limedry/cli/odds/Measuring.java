package org.limedry.cli.odds;

import java.util.Map;

/** How an unknown of a site can be found out, in the words of the trade. Common practice, no source. */
final class Measuring {
    private static final String NO_WAY = "no easy test";

    /** By key of the unknown, without the room that may follow it. */
    private static final Map<String, String> WAYS = Map.of(
            "wetness", "drill, weigh, dry, weigh again: wall of the file, saturationPercent",
            "wallEntrySuction", "a laboratory, or the wait of a first patch",
            "wallAbsorption", "stand a dry brick in 5 mm of water and weigh it: own, absorptionKgPerM2RootS",
            "openingFlow", "two loggers, in and out, with the door open",
            "freeWater", "weigh a litre of mortar, dry it, weigh again: freeWaterLitresPerM3",
            "leakage", "two loggers, in and out, a week shut",
            "readySuction", "your own hand test of any coat here: handTests",
            "readyAge", "your own hand test of any coat here: handTests",
            "readyFace", "your own hand test of any coat here: handTests",
            "coatThickness", "nails pushed in, or buckets used over area");

    private Measuring() {}

    static String of(String key) {
        return WAYS.getOrDefault(key.replaceFirst("[.].*", ""), NO_WAY);
    }
}
