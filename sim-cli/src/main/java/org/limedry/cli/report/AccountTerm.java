package org.limedry.cli.report;

import java.util.List;
import java.util.stream.Stream;
import org.limedry.cli.chart.Fill;
import org.limedry.cli.chart.WaterAccountChart;
import org.limedry.simulation.WaterAccount;

/** The terms of the water account in the order of the page, with what each is called on its own and on the other side. */
enum AccountTerm {
    LAID(Side.PUT_IN, "laid in the coats", "taken out of the coats", Fill.GREY),
    GROUND(Side.PUT_IN, "from the ground", "into the ground", Fill.CROSS),
    PEOPLE(Side.PUT_IN, "people working in the room", "taken by people", Fill.LIGHT),
    WETTING(Side.PUT_IN, "misting and wetting", "taken by misting", Fill.DOTS),
    PLANT(Side.PUT_IN, "burnt in heaters without a flue", "taken by heaters", Fill.WHITE),
    RELEASED(Side.PUT_IN, "let go as the lime hardens", "taken as the lime hardens", Fill.HEAVY),
    OUT_BY_AIR(Side.GONE, "out by doors and leaks", "brought in by outside air", Fill.WHITE),
    DEHUMIDIFIER(Side.GONE, "caught by dehumidifiers", "given back by dehumidifiers", Fill.LIGHT),
    RUN_OFF(Side.GONE, "ran off cold faces", "ran onto cold faces", Fill.DOTS),
    THROUGH_WALLS(Side.GONE, "out through the walls", "in through the walls", Fill.HEAVY),
    BETWEEN_ROOMS(Side.GONE, "to other rooms by doors", "from other rooms by doors", Fill.CROSS),
    BOUND(Side.GONE, "bound as the lime set", "let go as the lime set", Fill.GREY),
    COATS(Side.STILL_HERE, "still in the coats", "given up by older coats", Fill.GREY),
    WALLS(Side.STILL_HERE, "taken up by the old walls", "given up by the old walls", Fill.CROSS),
    AIR(Side.STILL_HERE, "in the room air", "given up by the room air", Fill.WHITE),
    FILM(Side.STILL_HERE, "standing on cold faces", "dried off cold faces", Fill.DOTS);

    private final Side side;
    private final String words;
    private final String otherWords;
    private final Fill fill;

    AccountTerm(Side side, String words, String otherWords, Fill fill) {
        this.side = side;
        this.words = words;
        this.otherWords = otherWords;
        this.fill = fill;
    }

    /** Where a term stands when it is positive. */
    enum Side {
        PUT_IN,
        GONE,
        STILL_HERE
    }

    /** Returns what it is called when it is positive. */
    String words() {
        return words;
    }

    /** Returns the terms of one side. */
    static List<WaterAccountChart.Term> of(WaterAccount account, Side side) {
        return Stream.of(values())
                .filter(term -> term.side == side)
                .map(term -> new WaterAccountChart.Term(term.words, term.otherWords, term.litres(account), term.fill))
                .toList();
    }

    private double litres(WaterAccount account) {
        return switch (this) {
            case LAID -> account.laidKg();
            case GROUND -> account.groundKg();
            case PEOPLE -> account.peopleKg();
            case WETTING -> account.wettingKg();
            case PLANT -> account.plantAddedKg();
            case RELEASED -> account.chemicalReleasedKg();
            case OUT_BY_AIR -> account.outByAirKg();
            case DEHUMIDIFIER -> account.dehumidifierKg();
            case RUN_OFF -> account.runOffKg();
            case THROUGH_WALLS -> account.throughWallsKg();
            case BETWEEN_ROOMS -> account.betweenRoomsKg();
            case BOUND -> account.chemicalBoundKg();
            case COATS -> account.changeInCoatsKg();
            case WALLS -> account.changeInWallsKg();
            case AIR -> account.changeInAirKg();
            case FILM -> account.changeInFilmKg();
        };
    }
}
