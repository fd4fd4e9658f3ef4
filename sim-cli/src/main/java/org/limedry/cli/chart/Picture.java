package org.limedry.cli.chart;

import java.util.List;
import java.util.function.BiFunction;

/** A chart laid out at one size. */
abstract class Picture {
    final Size size;

    Picture(Size size) {
        this.size = size;
    }

    /** One for each kind of chart. */
    private static List<Maker<?>> makers() {
        return List.of(
                new Maker<>(AiringChart.class, AiringPicture::new),
                new Maker<>(CareChart.class, CarePicture::new),
                new Maker<>(ChancesChart.class, ChancesPicture::new),
                new Maker<>(CoverageChart.class, CoveragePicture::new),
                new Maker<>(DelayChart.class, DelayPicture::new),
                new Maker<>(DoorsChart.class, DoorsPicture::new),
                new Maker<>(DryingChart.class, DryingPicture::new),
                new Maker<>(NarrowingChart.class, NarrowingPicture::new),
                new Maker<>(PlotsChart.class, PlotsPicture::new),
                new Maker<>(ProgrammeChart.class, ProgrammePicture::new),
                new Maker<>(RankChart.class, RankPicture::new),
                new Maker<>(ReadingsChart.class, ReadingsPicture::new),
                new Maker<>(ResidualChart.class, ResidualPicture::new),
                new Maker<>(SavedChart.class, SavedPicture::new),
                new Maker<>(SeasonsChart.class, SeasonsPicture::new),
                new Maker<>(WallAndDewPointChart.class, WallPicture::new),
                new Maker<>(WaterAccountChart.class, Picture::ofAccount));
    }

    private record Maker<C extends Chart>(Class<C> kind, BiFunction<C, Size, Picture> lay) {
        Picture of(Chart chart, Size size) {
            return lay.apply(kind.cast(chart), size);
        }
    }

    /** Lays a chart out. */
    static Picture of(Chart chart, Size size) {
        return makers().stream()
                .filter(maker -> maker.kind().isInstance(chart))
                .findFirst()
                .orElseThrow(() -> new AssertionError(chart))
                .of(chart, size);
    }

    private static Picture ofAccount(WaterAccountChart account, Size size) {
        return size == Size.WIDE ? new AccountBars(account.shown()) : new AccountSteps(account.shown());
    }

    double widthPx() {
        return size.widthPx();
    }

    abstract double heightPx();

    /** Returns what the chart tells, in sentences with its figures, for those who cannot see it. */
    abstract String story();

    abstract void draw(Canvas canvas);

    /** Returns words in the usual type of this size. */
    final Text plain(String words) {
        return Text.plain(words, size.textPx());
    }

    final Text bold(String words) {
        return Text.bold(words, size.textPx());
    }

    /** Returns the left edge of words about {@code middle}, moved so far that they stay on the picture. */
    final double leftAbout(double middle, Text words) {
        return Math.max(0, Math.min(middle - words.widthPx() / 2, widthPx() - words.widthPx()));
    }
}
