package org.limedry.cli.odds;

import java.util.List;
import java.util.Map;
import org.limedry.cli.safety.Advised;

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
        return WAYS.getOrDefault(plain(key), NO_WAY);
    }

    /** Returns what finding out has people do that calls for care. */
    static List<Advised> advised(String key) {
        return switch (plain(key)) {
            case "wetness" -> List.of(Advised.DRILL);
            case "wallAbsorption" -> List.of(Advised.OPEN_UP);
            case "openingFlow" -> List.of(Advised.OPEN);
            case "leakage" -> List.of(Advised.SHUT);
            default -> List.of();
        };
    }

    private static String plain(String key) {
        return key.replaceFirst("[.].*", "");
    }
}
