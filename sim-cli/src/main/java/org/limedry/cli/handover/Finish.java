package org.limedry.cli.handover;

import java.time.LocalDate;
import java.time.Period;

/** What may go on lime plaster, and how long after its last coat is ready; the most open to vapour first. */
enum Finish {
    LIMEWASH(
            "Limewash",
            Period.ZERO,
            Period.ZERO,
            false,
            "as soon as firm; strong dark colours wait until dry (a lime maker, 2016, read, S88); above 5 \u00b0C (read, S46)"),
    MINERAL(
            "Mineral (silicate) paint",
            Period.ofWeeks(4),
            Period.ofWeeks(8),
            false,
            "4 to 8 weeks on fat lime (a lime maker, 2016, read, S88)"),
    ORDINARY(
            "Ordinary emulsion or oil paint",
            Period.ofMonths(9),
            Period.ofMonths(12),
            true,
            "9 to 12 months, advice for new houses, not for lime (a house builders' body, read, S90); one supplier of lime"
                    + " says 4 weeks (read, S89), the longer is taken"),
    PAPER(
            "Wallpaper",
            Period.ofMonths(9),
            Period.ofMonths(12),
            true,
            "taken like ordinary paint: common practice, no source");

    /** Where the sources are named, for the foot of the page. */
    static final String SOURCES =
            "S46, S88, S89 and S90 are named in the list of sources of limedry (materials/sources)."
                    + " All read in excerpts, none tested here.";

    private final String words;
    private final Period soonest;
    private final Period usual;
    private final boolean vapourTight;
    private final String restsOn;

    Finish(String words, Period soonest, Period usual, boolean vapourTight, String restsOn) {
        this.words = words;
        this.soonest = soonest;
        this.usual = usual;
        this.vapourTight = vapourTight;
        this.restsOn = restsOn;
    }

    String words() {
        return words;
    }

    /** Tells whether it shuts vapour in, so that the wall under it must be dry. */
    boolean isVapourTight() {
        return vapourTight;
    }

    String restsOn() {
        return restsOn;
    }

    /** Returns the first day on which it may go on, counted from the day on which the plaster is ready. */
    LocalDate soonest(LocalDate ready) {
        return ready.plus(soonest);
    }

    /** Returns the day by which the longer of the waits is over. */
    LocalDate usual(LocalDate ready) {
        return ready.plus(usual);
    }
}
