package org.limedry.cli.site;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.problem.InputProblem;
import org.limedry.reference.Estimate;
import org.limedry.study.Uncertain;
import org.limedry.study.fit.Fitted;

/** The file in which a fit is kept, as JSON: people read the ranges in it, the next run the rest. */
public final class FittedJson {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .addModule(new JavaTimeModule())
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .build();

    private FittedJson() {}

    /** What became of a file. */
    sealed interface Result {}

    /** It could be read. */
    record Good(FittedFile file) implements Result {}

    /** It could not. */
    record Bad(InputProblem problem) implements Result {}

    private record Sheet(
            String note,
            String site,
            List<String> building,
            Dates issue,
            @Nullable Dates before,
            List<Moved> changes,
            List<Moved> readings,
            List<Unknown> unknowns) {}

    private record Dates(Instant readingsUntil, List<Coat> coats) {}

    @JsonInclude(JsonInclude.Include.ALWAYS)
    private record Coat(
            String wall,
            int coat,
            @Nullable Instant earliest,
            @Nullable Instant likely,
            @Nullable Instant latest) {}

    private record Moved(String cause, String wall, int coat, double daysLater) {}

    private record Span(double low, double likely, double high) {}

    private record Unknown(
            String key,
            String words,
            String unit,
            boolean byFactor,
            String status,
            String source,
            Span before,
            Span now,
            double mean,
            List<Double> leftOpen) {}

    /** Returns the text of the file. */
    public static String text(FittedFile file) {
        Sheet sheet = new Sheet(
                "What limedry fit made of the readings. now: 1 in 10 lies below low, 1 in 10 above high.",
                file.site(),
                file.building(),
                sheet(file.issue()),
                file.before().map(FittedJson::sheet).orElse(null),
                sheet(file.changes()),
                sheet(file.readings()),
                IntStream.range(0, file.unknowns().size())
                        .mapToObj(i -> unknown(file, i))
                        .toList());
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        try {
            return JSON.writer(printer).writeValueAsString(sheet) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Moved> sheet(List<FittedFile.Change> changes) {
        return changes.stream()
                .map(change -> new Moved(change.cause(), change.wall(), change.coat(), change.days()))
                .toList();
    }

    private static Dates sheet(FittedFile.Issue issue) {
        return new Dates(
                issue.readingsUntil(),
                issue.coats().stream()
                        .map(coat -> new Coat(
                                coat.wall(),
                                coat.coat(),
                                coat.earliest().orElse(null),
                                coat.likely().orElse(null),
                                coat.latest().orElse(null)))
                        .toList());
    }

    private static Unknown unknown(FittedFile file, int i) {
        Uncertain unknown = file.unknowns().get(i);
        Estimate now = file.now(unknown).orElseThrow();
        return new Unknown(
                unknown.key(),
                unknown.words(),
                unknown.unit(),
                unknown.byFactor(),
                unknown.status(),
                unknown.source(),
                new Span(unknown.low(), unknown.likely(), unknown.high()),
                new Span(now.low(), now.likely(), now.high()),
                file.fitted().mean(i),
                file.fitted().points().stream().map(point -> point[i]).toList());
    }

    /**
     * Reads the text of a file.
     *
     * @param shown the file as the user named it
     */
    static Result parse(String text, String shown) {
        try {
            return new Good(file(JSON.readValue(text, Sheet.class)));
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(e.getLocation().getLineNr(), 0);
            return new Bad(new InputProblem(shown, line, "", rule(), String.valueOf(e.getOriginalMessage())));
        } catch (IllegalArgumentException e) {
            return new Bad(new InputProblem(shown, 0, "", rule(), String.valueOf(e.getMessage())));
        }
    }

    private static String rule() {
        return "must be a file as limedry fit writes it; run it again";
    }

    private static FittedFile file(Sheet sheet) {
        double[] mean = sheet.unknowns.stream().mapToDouble(Unknown::mean).toArray();
        List<String> keys = sheet.unknowns.stream().map(Unknown::key).toList();
        return new FittedFile(
                sheet.site,
                sheet.building,
                sheet.unknowns.stream().map(FittedJson::uncertain).toList(),
                new Fitted(keys, new ArrayRealVector(mean), points(sheet.unknowns)),
                issue(sheet.issue),
                Optional.ofNullable(sheet.before).map(FittedJson::issue),
                changes(sheet.changes),
                changes(sheet.readings));
    }

    private static List<double[]> points(List<Unknown> unknowns) {
        int count = unknowns.isEmpty() ? 0 : unknowns.get(0).leftOpen.size();
        for (int i = 0; i < unknowns.size(); i++) {
            int own = unknowns.get(i).leftOpen.size();
            if (own != count || own == 0) {
                throw new IllegalArgumentException("unknowns[" + i + "].leftOpen has " + own
                        + " numbers, that of unknowns[0] " + count + ": each must have as many, at least one");
            }
        }
        return IntStream.range(0, count)
                .mapToObj(point -> unknowns.stream()
                        .mapToDouble(unknown -> unknown.leftOpen.get(point))
                        .toArray())
                .toList();
    }

    private static List<FittedFile.Change> changes(List<Moved> sheet) {
        return sheet.stream()
                .map(change -> new FittedFile.Change(change.cause, change.wall, change.coat, change.daysLater))
                .toList();
    }

    private static Uncertain uncertain(Unknown unknown) {
        return new Uncertain(
                unknown.key,
                unknown.words,
                unknown.unit,
                unknown.before.low,
                unknown.before.likely,
                unknown.before.high,
                unknown.byFactor,
                unknown.status,
                unknown.source);
    }

    private static FittedFile.Issue issue(Dates dates) {
        return new FittedFile.Issue(
                dates.readingsUntil,
                dates.coats.stream()
                        .map(coat -> new FittedFile.CoatDates(
                                coat.wall,
                                coat.coat,
                                Optional.ofNullable(coat.earliest),
                                Optional.ofNullable(coat.likely),
                                Optional.ofNullable(coat.latest)))
                        .toList());
    }
}
