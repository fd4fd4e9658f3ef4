package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.limedry.cli.chart.ResidualChart.Channel;
import org.limedry.cli.chart.ResidualChart.Marks;
import org.limedry.cli.chart.ResidualChart.Reading;
import org.limedry.cli.chart.ResidualLines.Sample;

final class ResidualChartTest {
    private static final Timeline WEEK = DryingSamples.timeline("2026-11-02T00:00:00Z", 7);
    private static final Timeline MONTH = DryingSamples.timeline("2026-11-02T00:00:00Z", 30);

    private static Reading reading(Timeline timeline, double hour, double measured, double before, double after) {
        return new Reading(DryingSamples.day(timeline, hour / 24), measured, before, after);
    }

    private static Channel channel(Marks marks, Reading... readings) {
        return new Channel("air, store.csv", "degrees C", marks, 0.5, "within 0.4 K mostly", List.of(readings));
    }

    @ParameterizedTest
    @EnumSource(Size.class)
    void svg_fourChannels_saysWhatEachIsAndHowWellItIsMet(Size size) {
        String words = String.join(
                " ",
                DrawnTexts.of(Charts.svg(ResidualSamples.four(WEEK, 7), size)).words());

        for (Channel channel : ResidualSamples.four(WEEK, 7).channels()) {
            assertTrue(words.contains(channel.name() + ", " + channel.unit()), words);
            assertTrue(words.contains(channel.verdict()), words);
        }
        for (String sample : List.of("read", "emptied", "by hand", "model before", "model now")) {
            assertTrue(words.contains(sample), words);
        }
        assertTrue(words.contains("where 19 of 20 readings should lie"), words);
    }

    @Test
    void svg_oneLogger_explainsNoOtherMarks() {
        List<String> words = DrawnTexts.of(
                        Charts.svg(ResidualSamples.chart(WEEK, ResidualSamples.humidity(WEEK, 7)), Size.WIDE))
                .words();

        assertFalse(words.contains("emptied"), words::toString);
        assertFalse(words.contains("by hand"), words::toString);
    }

    // EXACT: 1.0 away is twice the usual error of 0.5, which still counts; 1.5 does not.
    @Test
    void story_readings_countsThoseWithinTwiceTheUsualError() {
        Channel channel = channel(
                Marks.LINE,
                reading(WEEK, 1, 10, 12, 11),
                reading(WEEK, 2, 10, 9.5, 10),
                reading(WEEK, 3, 10, 14, 11.5));

        String story =
                Picture.of(ResidualSamples.chart(WEEK, channel), Size.WIDE).story();

        assertEquals(
                "air, store.csv, degrees C: within 0.4 K mostly. Of 3 readings 2 lie within twice their usual error of"
                        + " the model now, 1 of the model before.",
                story);
    }

    // EXACT: mean, lowest and highest of the hours of a day, and the mean moment of them.
    @Test
    void lines_overThreeWeeks_areMeansOfDays() {
        Channel channel = channel(
                Marks.LINE,
                reading(MONTH, 6, 10, 1, 20),
                reading(MONTH, 12, 13, 2, 22),
                reading(MONTH, 18, 19, 6, 27),
                reading(MONTH, 36, 11, 3, 4));

        List<Sample> samples = ResidualLines.of(channel, MONTH).samples();

        assertEquals(
                List.of(
                        new Sample(reading(MONTH, 12, 14, 3, 23), 10, 19, 20, 27),
                        new Sample(reading(MONTH, 36, 11, 3, 4), 11, 11, 4, 4)),
                samples);
    }

    // EXACT: readings by hand are never made into means.
    @ParameterizedTest
    @EnumSource(
            value = Marks.class,
            names = {"DOTS", "BARS"})
    void lines_byHand_keepEveryReading(Marks marks) {
        Channel channel = channel(marks, reading(MONTH, 6, 10, 1, 20), reading(MONTH, 8, 13, 2, 22));

        assertEquals(
                List.of(10.0, 13.0),
                ResidualLines.of(channel, MONTH).samples().stream()
                        .map(sample -> sample.mean().measured())
                        .toList());
    }

    // EXACT: hourly readings, none from hour 30 to hour 49: two runs of 30 and of 51.
    @Test
    void lines_gap_staysOpen() {
        Channel channel = channel(
                Marks.LINE,
                IntStream.rangeClosed(0, 100)
                        .filter(hour -> hour < 30 || hour >= 50)
                        .mapToObj(hour -> reading(WEEK, hour, 8, 8, 8))
                        .toArray(Reading[]::new));

        assertEquals(
                List.of(30, 51),
                ResidualLines.of(channel, WEEK).runs().stream().map(List::size).toList());
    }

    // EXACT: model and readings at 10 degrees, the band from 9 to 11, the model before at 14: 10.8 is on the band,
    // whose
    // grey is 208 of 255, and 12.5 is on white paper. 4 for the grey conversion of the image.
    @Test
    void png_band_reachesTwiceTheUsualErrorFromTheModelNow() throws IOException {
        Channel channel = channel(
                Marks.LINE,
                IntStream.rangeClosed(0, 168)
                        .mapToObj(hour -> reading(WEEK, hour, 10, 14, 10))
                        .toArray(Reading[]::new));
        ResidualChart chart = ResidualSamples.chart(WEEK, channel);
        ValueScale scale = ResidualStrip.scale(channel, WEEK);

        BufferedImage image = ImageIO.read(new ByteArrayInputStream(Charts.png(chart, Size.WIDE, 1)));

        double bottom = 12 + 18 * 1.02 + 12 + Picture.of(chart, Size.WIDE).heightPx() - 32;
        assertEquals(208, grey(image, bottom, scale, 10.8), 4);
        assertEquals(208, grey(image, bottom, scale, 9.2), 4);
        assertEquals(255, grey(image, bottom, scale, 12.5), 4);
    }

    private static int grey(BufferedImage image, double bottom, ValueScale scale, double value) {
        double y = bottom - 180 * (value - scale.low()) / (scale.high() - scale.low());
        return image.getRaster().getSample(300, (int) Math.round(y), 0);
    }

    // PINNED: 83 kB at 3 weeks, hour by hour, and 43 kB at 12 weeks, day by day; the bound leaves a third more. The
    // last
    // logger reads every 10 minutes: 3,024 readings on 640 px.
    @ParameterizedTest
    @ValueSource(ints = {21, 84})
    void svg_fourLoggers_isSmall(int days) {
        Timeline timeline = DryingSamples.timeline("2026-11-02T00:00:00Z", days);
        Channel hourly = ResidualSamples.humidity(timeline, days);
        Channel often = channel(
                Marks.LINE,
                IntStream.range(0, 144 * days)
                        .mapToObj(i -> reading(timeline, i / 6.0, 10 + (i * 7919 % 100) / 50.0, 12, 11))
                        .toArray(Reading[]::new));

        String svg = Charts.svg(ResidualSamples.chart(timeline, hourly, hourly, hourly, often), Size.WIDE);

        assertTrue(svg.length() < 110_000, () -> "characters " + svg.length());
    }

    @Test
    void channel_badData_isRefused() {
        Reading good = reading(WEEK, 1, 10, 12, 11);

        assertThrows(IllegalArgumentException.class, () -> reading(WEEK, 1, Double.NaN, 12, 11));
        assertThrows(IllegalArgumentException.class, () -> reading(WEEK, 1, 10, Double.POSITIVE_INFINITY, 11));
        assertThrows(IllegalArgumentException.class, () -> reading(WEEK, 1, 10, 12, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> channel(Marks.LINE));
        assertThrows(IllegalArgumentException.class, () -> channel(Marks.LINE, good, good));
        assertThrows(IllegalArgumentException.class, () -> channel(Marks.LINE, good, reading(WEEK, 0.5, 10, 12, 11)));
        assertThrows(IllegalArgumentException.class, () -> channel(Marks.BARS, reading(WEEK, 1, -0.1, 12, 11)));
        assertThrows(IllegalArgumentException.class, () -> channel(Marks.BARS, reading(WEEK, 1, 10, 12, -1)));
        assertThrows(IllegalArgumentException.class, () -> named(" ", "C", 1, "good", good));
        assertThrows(IllegalArgumentException.class, () -> named("air", "", 1, "good", good));
        assertThrows(IllegalArgumentException.class, () -> named("air", "C", 0, "good", good));
        assertThrows(IllegalArgumentException.class, () -> named("air", "C", 1, "", good));
    }

    // EXACT: a wall whose face two guns read has two readings at one time; they stand as two dots.
    @Test
    void channel_twoReadingsAtOneTime_areTakenAsDotsOnly() {
        Reading good = reading(WEEK, 1, 10, 12, 11);

        assertEquals(2, channel(Marks.DOTS, good, good).readings().size());
        assertThrows(IllegalArgumentException.class, () -> channel(Marks.DOTS, good, reading(WEEK, 0.5, 10, 12, 11)));
    }

    private static Channel named(String name, String unit, double error, String verdict, Reading reading) {
        return new Channel(name, unit, Marks.LINE, error, verdict, List.of(reading));
    }

    @Test
    void chart_badData_isRefused() {
        Channel good = channel(Marks.LINE, reading(WEEK, 1, 10, 12, 11));
        Instant early = WEEK.from().minusSeconds(1);
        Channel outside = channel(Marks.LINE, new Reading(early, 10, 12, 11));
        Channel[] five = Collections.nCopies(5, good).toArray(Channel[]::new);

        assertThrows(IllegalArgumentException.class, () -> ResidualSamples.chart(WEEK));
        assertThrows(IllegalArgumentException.class, () -> ResidualSamples.chart(WEEK, five));
        assertThrows(IllegalArgumentException.class, () -> ResidualSamples.chart(WEEK, good, outside));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ResidualChart("Residuals", "title", WEEK, Arrays.asList(good)));
        assertThrows(
                IllegalArgumentException.class, () -> new ResidualChart("residuals", " ", WEEK, Arrays.asList(good)));
    }
}
