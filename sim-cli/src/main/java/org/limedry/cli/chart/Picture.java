package org.limedry.cli.chart;

/** A chart laid out at one size. */
interface Picture {
    double widthPx();

    double heightPx();

    /** Returns what the chart tells, in sentences with its figures, for those who cannot see it. */
    String story();

    void draw(Canvas canvas);

    static Picture of(Chart chart, Size size) {
        if (chart instanceof DryingChart drying) {
            return new DryingPicture(drying, size);
        } else if (chart instanceof WallAndDewPointChart wall) {
            return new WallPicture(wall, size);
        } else if (chart instanceof WaterAccountChart account) {
            return size == Size.WIDE ? new AccountBars(account.shown()) : new AccountSteps(account.shown());
        } else if (chart instanceof RankChart rank) {
            return new RankPicture(rank, size);
        } else if (chart instanceof ChancesChart chances) {
            return new ChancesPicture(chances, size);
        } else if (chart instanceof AiringChart airing) {
            return new AiringPicture(airing, size);
        }
        throw new AssertionError(chart);
    }
}
