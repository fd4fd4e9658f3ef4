package org.limedry.cli.fit;

import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The twin experiments that were made, a line for each week of each: docs/fit-twins.csv. */
final class TwinFile {
    private static final CsvMapper MAPPER = new CsvMapper();
    private static final CsvSchema SCHEMA =
            MAPPER.schemaFor(Row.class).withHeader().withLineSeparator("\n").withoutQuoteChar();

    private TwinFile() {}

    /** A line; dates to the minute, what the readings told as "wetness inside, stillAir below". */
    @JsonPropertyOrder({"seed", "week", "ready", "byHand", "usable", "likely", "oneInTen", "half", "nineInTen", "told"})
    record Row(
            int seed,
            int week,
            String ready,
            boolean byHand,
            boolean usable,
            String likely,
            String oneInTen,
            String half,
            String nineInTen,
            String told) {
        static Row of(TwinCase twin, int week) {
            TwinCase.Week said = twin.weeks().get(week - 1);
            return new Row(
                    twin.seed(),
                    week,
                    minute(twin.ready()),
                    said.byHand(),
                    said.usable(),
                    minute(said.likely()),
                    minute(said.oneInTen()),
                    minute(said.half()),
                    minute(said.nineInTen()),
                    said.told().entrySet().stream()
                            .map(one ->
                                    one.getKey() + " " + one.getValue().name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining("; ")));
        }

        TwinCase.Week said() {
            Map<String, TwinCase.Truth> truths = new TreeMap<>();
            Arrays.stream(told.split("; "))
                    .filter(one -> !one.isEmpty())
                    .map(one -> one.split(" "))
                    .forEach(one -> truths.put(one[0], TwinCase.Truth.valueOf(one[1].toUpperCase(Locale.ROOT))));
            return new TwinCase.Week(
                    byHand,
                    usable,
                    Instant.parse(likely),
                    Instant.parse(oneInTen),
                    Instant.parse(half),
                    Instant.parse(nineInTen),
                    truths);
        }
    }

    private static String minute(Instant at) {
        return at.truncatedTo(ChronoUnit.MINUTES).toString();
    }

    /** Returns the cases of a file in the order of their seeds; none if it is not there. */
    static List<TwinCase> read(Path file) throws IOException {
        if (!Files.exists(file)) {
            return List.of();
        }
        Map<Integer, List<Row>> bySeed = new TreeMap<>();
        for (Object row : MAPPER.readerFor(Row.class)
                .with(SCHEMA)
                .readValues(Files.readString(file))
                .readAll()) {
            bySeed.computeIfAbsent(((Row) row).seed(), seed -> new ArrayList<>())
                    .add((Row) row);
        }
        return bySeed.entrySet().stream()
                .map(one -> new TwinCase(
                        one.getKey(),
                        Instant.parse(one.getValue().get(0).ready()),
                        one.getValue().stream().map(Row::said).toList()))
                .toList();
    }

    /** Writes cases into a file, in place of those of the same seeds. */
    static void add(Path file, List<TwinCase> cases) throws IOException {
        Map<Integer, TwinCase> bySeed = new TreeMap<>();
        read(file).forEach(one -> bySeed.put(one.seed(), one));
        cases.forEach(one -> bySeed.put(one.seed(), one));
        List<Row> rows = new ArrayList<>();
        for (TwinCase one : bySeed.values()) {
            for (int week = 1; week <= one.weeks().size(); week++) {
                rows.add(Row.of(one, week));
            }
        }
        Files.writeString(file, MAPPER.writer(SCHEMA).writeValueAsString(rows));
    }
}
