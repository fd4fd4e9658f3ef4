package org.limedry.cli.readings.logger;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** What makes a file as a whole hard to believe: other units, columns the wrong way round, a clock without AM and PM. */
final class Doubts {
    /** No room that is being plastered is as warm as this for half of the time. */
    private static final double WARMEST_MEDIAN_CELSIUS = 35.0;

    /** Air is never this dry for good; a fraction always is. */
    static final double HIGHEST_FRACTION = 1.5;

    /** Units of wind that are not m/s. */
    private static final Pattern OTHER_WIND =
            Pattern.compile("km ?/? ?h|\\bkph|mph|\\bkn\\b|\\bkts?\\b|knot|\\bbft|beaufort");

    private static final int LEAST_READINGS = 3;

    private final Sheet sheet;
    private final Places places;
    private final Tally tally;
    private final Questions questions;

    Doubts(Sheet sheet, Places places, Tally tally, Questions questions) {
        this.sheet = sheet;
        this.places = places;
        this.tally = tally;
        this.questions = questions;
    }

    void raise(ReadingPlan.Units units) {
        doubtCells();
        doubtTemperature(units.temperature());
        doubtHumidity(units.humidity());
        doubtWind();
        doubtClock();
    }

    /** A number whose decimals are parted by a comma falls into two cells where commas part the cells. */
    private void doubtCells() {
        int named = sheet.headings().size();
        if (named > 0 && tally.hasCellsBeyondHeadings() && !questions.isAsked(PlanKey.HEADINGS)) {
            questions.open(
                    PlanKey.PARTED_BY,
                    sheet.usualColumns() + " cells in most lines under " + named + " headings",
                    "looks like decimal commas between commas; have the program part cells by semicolons, or write decimal"
                            + " points; if the lines are right, say --headings 0 and name the columns by number");
        }
    }

    private double median(Role role) {
        return places.of(role).map(sheet::median).orElse(Double.NaN);
    }

    private void doubtTemperature(Unit unit) {
        double median = unit.convert(median(Role.TEMPERATURE));
        if (!(median > WARMEST_MEDIAN_CELSIUS) || questions.isAsked(PlanKey.TEMPERATURE_UNIT)) {
            return;
        }
        double humidity = median(Role.HUMIDITY);
        boolean swapped = humidity > HIGHEST_FRACTION && humidity < WARMEST_MEDIAN_CELSIUS;
        String found = "half of the temperatures are above " + Math.round(Math.floor(median * 10) / 10) + " degrees C";
        if (swapped) {
            questions.open(
                    PlanKey.TEMPERATURE,
                    found + " and half of the humidities below 35 %",
                    "look like the wrong way round; say --temperature COLUMN and --humidity COLUMN");
        } else {
            questions.open(
                    PlanKey.TEMPERATURE_UNIT,
                    found,
                    "look like Fahrenheit; say --temperature-unit F, or C if they are right");
        }
    }

    private void doubtHumidity(Unit unit) {
        if (unit != Unit.PERCENT || !places.has(Role.HUMIDITY) || questions.isAsked(PlanKey.HUMIDITY_UNIT)) {
            return;
        }
        OptionalDouble highest = tally.highestHumidity(LEAST_READINGS);
        if (highest.isPresent() && highest.getAsDouble() <= HIGHEST_FRACTION) {
            questions.open(
                    PlanKey.HUMIDITY_UNIT,
                    "no humidity is above " + highest.getAsDouble() + " %",
                    "look like fractions of 1; say --humidity-unit fraction, or percent if they are right");
        }
    }

    private void doubtWind() {
        places.of(Role.WIND)
                .filter(column -> OTHER_WIND
                        .matcher(sheet.heading(column).toLowerCase(Locale.ROOT))
                        .find())
                .ifPresent(column -> questions.open(
                        PlanKey.WIND,
                        sheet.words(column),
                        "must be in m/s; turn it into m/s and head it so, or leave wind out"));
    }

    /** A clock of 12 hours without AM and PM goes from 12 to 1 on one day and never past 12. */
    private void doubtClock() {
        if (tally.isClockOfHalfDays()) {
            questions.open(
                    PlanKey.TIME,
                    "the hours go from 12 to 1 and never past 12: a clock of 12 hours without AM or PM",
                    "must say AM or PM, or count to 24; set the logger or its program so and read it out again");
        }
    }
}
