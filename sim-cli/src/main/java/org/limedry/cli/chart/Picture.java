package org.limedry.cli.chart;

/** A chart laid out at one size. */
interface Picture {
    double widthPx();

    double heightPx();

    /** Returns what the chart tells, in sentences with its figures, for those who cannot see it. */
    String story();

    void draw(Canvas canvas);

    static Picture of(Chart chart, Size size) {
        if (chart instanceof DoorsChart doors) {
            return new DoorsPicture(doors, size);
        } else if (chart instanceof DryingChart drying) {
            return new DryingPicture(drying, size);
        } else if (chart instanceof WallAndDewPointChart wall) {
            return new WallPicture(wall, size);
        } else if (chart instanceof PlotsChart plots) {
            return new PlotsPicture(plots, size);
        } else if (chart instanceof ReadingsChart readings) {
            return new ReadingsPicture(readings, size);
        } else if (chart instanceof WaterAccountChart account) {
            return size == Size.WIDE ? new AccountBars(account.shown()) : new AccountSteps(account.shown());
        } else if (chart instanceof SavedChart saved) {
            return new SavedPicture(saved, size);
        } else if (chart instanceof RankChart rank) {
            return new RankPicture(rank, size);
        } else if (chart instanceof ChancesChart chances) {
            return new ChancesPicture(chances, size);
        } else if (chart instanceof SeasonsChart seasons) {
            return new SeasonsPicture(seasons, size);
        } else if (chart instanceof ProgrammeChart programme) {
            return new ProgrammePicture(programme, size);
        } else if (chart instanceof DelayChart delay) {
            return new DelayPicture(delay, size);
        } else if (chart instanceof AiringChart airing) {
            return new AiringPicture(airing, size);
        }
        throw new AssertionError(chart);
    }
}
