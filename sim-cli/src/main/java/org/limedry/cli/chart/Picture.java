package org.limedry.cli.chart;

import java.util.List;
import java.util.function.BiFunction;

/** A chart laid out at one size. */
interface Picture {
    double widthPx();

    double heightPx();

    /** Returns what the chart tells, in sentences with its figures, for those who cannot see it. */
    String story();

    void draw(Canvas canvas);

    /**
     * How one kind of chart is laid out.
     *
     * @param kind the kind
     * @param lay lays it out
     */
    record Maker<C extends Chart>(Class<C> kind, BiFunction<C, Size, Picture> lay) {
        Picture of(Chart chart, Size size) {
            return lay.apply(kind.cast(chart), size);
        }
    }

    /** One for each kind of chart. */
    List<Maker<?>> MAKERS = List.of(
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

    /** Lays a chart out. */
    static Picture of(Chart chart, Size size) {
        return MAKERS.stream()
                .filter(maker -> maker.kind().isInstance(chart))
                .findFirst()
                .orElseThrow(() -> new AssertionError(chart))
                .of(chart, size);
    }

    private static Picture ofAccount(WaterAccountChart account, Size size) {
        return size == Size.WIDE ? new AccountBars(account.shown()) : new AccountSteps(account.shown());
    }
}
