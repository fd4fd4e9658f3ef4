package org.limedry.cli.site;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.ListShape;
import org.limedry.cli.site.schema.Named;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.cli.site.schema.WordShape;
import org.limedry.climate.Shelter;
import org.limedry.reference.WeatherYear;

/** The top of the site file; from here hangs everything that it may say. */
final class SiteKeys {
    private static final Set<DayOfWeek> MONDAY_TO_FRIDAY = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    static final Key<String> SITE = Key.needed("site", TextShape.free(), "what you call the job");

    static final Shape<String> WEATHER_NAME = new TextShape<>(
            String.join(" / ", WeatherYear.names()) + " / a file that ends in .csv",
            "^(" + String.join("|", WeatherYear.names()) + "|.+\\.csv)$",
            SiteKeys::weather);
    static final Key<String> WEATHER = Key.needed(
            "weather",
            WEATHER_NAME,
            "a shipped weather year, or a file of your own beside this one; its dates serve any year");
    static final Key<ZoneId> TIME_ZONE = Key.optional(
                    "timeZone", Words.zone(), "clock by which all times here are told")
            .workedOut("that of the shipped station; needed with a file of your own");
    static final Key<Double> ALTITUDE_M = Key.optional(
                    "altitudeM", NumberShape.between(-400.0, 5000.0), "height above the sea")
            .workedOut("that of the shipped station, else 0");
    static final Key<Shelter> SHELTER = Key.optional(
                    "shelter",
                    WordShape.of(Shelter.values(), Words::ofConstant),
                    "how much of the station's wind reaches the building: 0.3, 0.6, all")
            .assumed(Shelter.SHELTERED, "sheltered", "among houses or trees; judgement, no source");
    static final Key<Entry> PLACE = Key.needed(
            "place", Block.of(WEATHER, TIME_ZONE, ALTITUDE_M, SHELTER), "where it is and whose weather it has");

    static final Key<LocalDate> FROM = Key.optional("from", Words.date(), "first day of the run")
            .workedOut("the day on which the first coat is laid");
    static final Key<LocalDate> UNTIL =
            Key.optional("until", Words.date(), "last day of the run").workedOut("90 days after from");
    static final Key<Double> BUCKET_LITRES = Key.optional(
                    "bucketLitres", NumberShape.between(1.0, 100.0), "bucket in which the report counts water")
            .plainly(10.0, "10");
    static final Key<Set<DayOfWeek>> WORKING_DAYS = Key.optional(
                    "workingDays", Words.days(), "days on which a coat can be laid when ready")
            .assumed(MONDAY_TO_FRIDAY, "Mon-Fri", "common practice, no source");
    static final Key<Double> COLD_LINE = Key.optional(
                    "coldLineCelsius", NumberShape.between(-5.0, 15.0), "no coat is laid when ready in colder air")
            .assumed(
                    5.0,
                    "5",
                    "line of the trade (S34, S35, S36); makers of natural hydraulic lime ask for 8 (S9, S10)");

    static final Key<List<Entry>> GANGS = Key.optional(
                    "gangs",
                    new ListShape<>(GangKeys.BLOCK, 1),
                    "who lays the coats in a programme; a gang goes where a coat is ready, first come in the order of the coats")
            .workedOut("one gang of 2");

    static final Key<Map<String, Entry>> ROOMS = Key.needed("rooms", Named.freely(RoomKeys.BLOCK, 1), "rooms by name");
    static final Key<Map<String, Entry>> MIXES = Key.needed("mixes", Named.freely(MixKeys.BLOCK, 1), "mixes by name");
    static final Key<List<Entry>> COATS =
            Key.needed("coats", new ListShape<>(CoatKeys.BLOCK, 1), "coats; on each wall in the order of laying");
    static final Key<Rule> READY_RULE = Key.optional(
                    "readyRule", RuleKeys.SHAPE, "when the next coat may go on; the firm picks its rule")
            .assumed(
                    RuleKeys.named("green-hard"),
                    "green-hard",
                    "fitted to loose figures of practice, not validated; a hand test overrules");
    static final Key<List<Entry>> HAND_TESTS = Key.optional(
                    "handTests",
                    new ListShape<>(CoatKeys.TEST_BLOCK, 0),
                    "what your own hand found; it overrules the rule")
            .plainly(List.of(), "none");
    static final Key<Map<String, Entry>> OWN = Key.optional(
                    "own", OwnKeys.SHAPE, "figures of your own for backgrounds, instead of ours")
            .plainly(Map.of(), "none");
    static final Key<Entry> ASSUME =
            Key.optional("assume", AssumeKeys.BLOCK, "other values for what nobody can know, or none");
    static final Key<Entry> PLANNED = Key.optional(
                    "planned",
                    PlannedKeys.BLOCK,
                    "what had been agreed, where the job went another way; the rest of the file is what happened")
            .workedOut("no delay is told");
    static final Key<List<Entry>> STEPS = Key.optional("steps", DelayKeys.STEPS, "what was done to lose less time")
            .plainly(List.of(), "none");
    static final Key<List<String>> RECORDS = Key.optional(
                    "records", new ListShape<>(TextShape.free(), 0), "records kept: diary, door log, logger files")
            .plainly(List.of(), "none");
    static final Key<Entry> NORMALS =
            Key.optional("normals", DelayKeys.NORMALS, "long-run normals of the place, for a delay; none are shipped");

    static final Key<List<Entry>> MEASURES = Key.optional(
                    "measures",
                    new ListShape<>(MeasureKeys.BLOCK, 0),
                    "what could be done to be ready sooner; for limedry options")
            .workedOut("a usual set");
    static final Key<Entry> RATES =
            Key.optional("rates", MeasureKeys.RATES, "your own rates; none is shipped; for limedry options");

    static final Key<Entry> READINGS = Key.optional(
                    "readings",
                    ReadingKeys.BLOCK,
                    "what was read on site; every run goes by it, limedry fit learns from it")
            .workedOut("nothing was read");
    static final Key<String> FITTED = Key.optional(
                    "fitted",
                    ReadingKeys.FILE_NAME,
                    "file that limedry fit wrote: what the readings say of what nobody can know")
            .workedOut("our ranges stand");

    static final Block BLOCK = Block.of(
            SITE,
            PLACE,
            FROM,
            UNTIL,
            BUCKET_LITRES,
            WORKING_DAYS,
            COLD_LINE,
            GANGS,
            ROOMS,
            MIXES,
            COATS,
            READY_RULE,
            HAND_TESTS,
            OWN,
            ASSUME,
            MEASURES,
            RATES,
            PLANNED,
            STEPS,
            RECORDS,
            NORMALS,
            READINGS,
            FITTED);

    private SiteKeys() {}

    private static String weather(String text) {
        if (!WeatherYear.names().contains(text) && !text.matches(".+\\.csv")) {
            throw new IllegalArgumentException(
                    "must be one of: " + String.join(", ", WeatherYear.names()) + ", or a file that ends in .csv");
        }
        return text;
    }
}
