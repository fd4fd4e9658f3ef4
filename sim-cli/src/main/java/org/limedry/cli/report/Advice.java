package org.limedry.cli.report;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.safety.Advised;
import org.limedry.climate.Schedule;
import org.limedry.room.Fumes;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Warning;
import org.limedry.units.Units;

/**
 * Two or three things to do that follow from the warnings and figures of a run, the most urgent first and the hand test
 * last. No gain in days is told: that would take a second run.
 */
final class Advice {
    private static final int MOST = 3;
    private static final double DOORS_OPEN_ENOUGH_HOURS = 8.0;
    private static final double A_THIRD = 1.0 / 3.0;
    private static final double A_QUARTER = 0.25;

    /** Lime is left to itself in its first days: plant then would dry it too fast. */
    private static final Duration FIRST_DAYS = Duration.ofDays(10);

    private final Findings findings;
    private final Days days;
    private final Optional<Waiting> worst;

    private Advice(Findings findings, Optional<Coat> worstLaid) {
        this.findings = findings;
        this.days = findings.days();
        this.worst = worstLaid.map(coat -> Waiting.of(findings, coat));
    }

    /**
     * Returns what to do.
     *
     * @param findings what was found
     * @param worstLaid the coat that waits longest, if any was laid
     */
    static List<DoLine> of(Findings findings, Optional<Coat> worstLaid) {
        Advice advice = new Advice(findings, worstLaid);
        List<DoLine> lines = new ArrayList<>();
        advice.carbonDioxide().ifPresent(lines::add);
        if (!lines.isEmpty()) {
            // Whatever else there is to do, nobody goes in to do it.
            advice.unflued().ifPresent(lines::add);
            return List.copyOf(lines);
        }
        advice.fromTheRun().limit(MOST - 1).forEach(lines::add);
        lines.add(advice.handTest());
        return List.copyOf(lines);
    }

    private Stream<DoLine> fromTheRun() {
        return Stream.<Supplier<Optional<DoLine>>>of(
                        this::unflued,
                        this::frost,
                        this::tooFast,
                        this::heatWithoutAir,
                        this::longerOpen,
                        this::plantSooner,
                        this::gentleHeat,
                        this::dryButSoft,
                        this::glass,
                        this::weakDehumidifier,
                        this::wallFull,
                        this::wetLath,
                        this::tooCold)
                .map(Supplier::get)
                .flatMap(Optional::stream);
    }

    private Optional<DoLine> carbonDioxide() {
        return worstOf(Warning.Kind.CARBON_DIOXIDE, true)
                .map(warning -> new DoLine(
                        "Keep out of the %s: fuel off and opened up from outside, the air tested by a competent person"
                                .formatted(findings.words(warning.subject())),
                        "carbon dioxide up to %s ppm on %s, and carbon monoxide is not worked out"
                                .formatted(Figures.whole(warning.value()), day(warning))));
    }

    private Optional<DoLine> frost() {
        Optional<Warning> air = worstOf(Warning.Kind.FROST_AIR, false);
        Optional<Warning> face = worstOf(Warning.Kind.FROST_WET_FACE, false);
        return Stream.concat(air.stream(), face.stream())
                .min(Comparator.comparing(Warning::from))
                .map(first -> new DoLine(
                        "Cover or gently warm the %s on frost nights, first %s"
                                .formatted(findings.words(first.subject()), day(first)),
                        air.isPresent()
                                ? "room air down to %s \u00b0C"
                                        .formatted(Figures.oneDecimal(air.get().value()))
                                : "the wet face fell to %s \u00b0C though the air did not freeze"
                                        .formatted(Figures.oneDecimal(face.get().value())),
                        Advised.HEAT));
    }

    private Optional<DoLine> unflued() {
        return worstOf(Warning.Kind.UNFLUED_HEATER, true)
                .map(warning -> new DoLine(
                        "Put the unflued heater in the %s out and use an electric one"
                                .formatted(findings.words(warning.subject())),
                        "it burnt %s litres of water into the room air".formatted(Figures.litres(warning.value())),
                        Advised.HEAT));
    }

    private Optional<DoLine> tooFast() {
        return worstOf(Warning.Kind.TOO_FAST, true)
                .map(warning -> new DoLine(
                        "Mist the %s twice a day and screen it from draught, %s to %s"
                                .formatted(
                                        findings.words(warning.subject()),
                                        day(warning),
                                        days.brief(days.lastDay(warning.until()))),
                        "it lost up to %s litres a m\u00b2 an hour, more than lime can give"
                                .formatted(Figures.plain(warning.value())),
                        Advised.MIST));
    }

    private Optional<DoLine> heatWithoutAir() {
        return worstOf(Warning.Kind.HEAT_WITHOUT_AIR, true)
                .map(warning -> new DoLine(
                        "Open a door or window whenever the heat is on",
                        "%s litres condensed on cold faces in the heated %s"
                                .formatted(Figures.litres(warning.value()), findings.words(warning.subject())),
                        Advised.OPEN));
    }

    private Optional<DoLine> dryButSoft() {
        return worstOf(Warning.Kind.DRY_BUT_SOFT, false)
                .map(warning -> new DoLine(
                        "Air the shut %s for an hour a day".formatted(findings.words(warning.subject())),
                        "its carbon dioxide fell to %s ppm, and lime needs it to harden"
                                .formatted(Figures.whole(warning.value())),
                        Advised.OPEN));
    }

    private Optional<DoLine> longerOpen() {
        return slow().filter(wait -> OutsideAir.of(wait, days).drierShare() >= A_THIRD)
                .filter(wait -> openHoursPerDay(wait) < DOORS_OPEN_ENOUGH_HOURS)
                .flatMap(wait -> openings(wait).map(names -> {
                    OutsideAir outside = OutsideAir.of(wait, days);
                    return new DoLine(
                            "Open the %s for longer on dry days".formatted(names),
                            "outside air was drier on %s of %s days, and %s"
                                    .formatted(
                                            Figures.whole(outside.drierDays()),
                                            Figures.whole(outside.days()),
                                            openWords(openHoursPerDay(wait))),
                            Advised.OPEN);
                }));
    }

    /** Asks for plant that was brought in while the coat had long been waiting in wet air. */
    private Optional<DoLine> plantSooner() {
        return slow().flatMap(wait -> room(wait).plant().stream()
                .flatMap(plant -> lateAndDry(wait, plant).stream())
                .findFirst());
    }

    private Optional<DoLine> lateAndDry(Waiting wait, Plant plant) {
        boolean heater = plant instanceof Plant.Heater burner && !Fumes.comeFrom(burner);
        if (!heater && !(plant instanceof Plant.Dehumidifier)) {
            return Optional.empty();
        }
        return plant.on().spans().stream()
                .findFirst()
                .map(Schedule.Span::from)
                .filter(from -> wait.hoursBefore(from, wait::isWet) >= A_QUARTER * wait.hours())
                .filter(from -> from.isAfter(wait.firstTime().plus(FIRST_DAYS)))
                .map(from -> new DoLine(
                        "Bring the %s in sooner than %s%s"
                                .formatted(
                                        plant.name(),
                                        days.brief(days.date(from)),
                                        heater ? ", and let the wet air out" : ", after the first week"),
                        "the air was full or the %s wet for %s before it came"
                                .formatted(
                                        findings.words(wait.wall().name()),
                                        Figures.count(wait.hoursBefore(from, wait::isWet), "hour")),
                        heater ? Advised.HEAT : Advised.DEHUMIDIFY));
    }

    private Optional<DoLine> gentleHeat() {
        return slow().filter(
                        wait -> wait.count(hour -> wait.room().heaterWatts().at(hour) > 0.0) < A_QUARTER * wait.hours())
                .filter(wait -> wait.count(wait::isAtDewPoint) >= A_QUARTER * wait.hours())
                .map(wait -> new DoLine(
                        "Bring gentle electric heat into the %s, and let the wet air out"
                                .formatted(wait.room().room()),
                        "the %s stood at %s \u00b0C, at or below the dew point for %s"
                                .formatted(
                                        findings.words(wait.wall().name()),
                                        Figures.whole(wait.mean(
                                                hour -> wait.face().celsius().at(hour))),
                                        Figures.count(wait.count(wait::isAtDewPoint), "hour")),
                        Advised.HEAT,
                        Advised.OPEN));
    }

    private Optional<DoLine> glass() {
        return worstOf(Warning.Kind.GLASS_RUNNING, true)
                .map(warning -> new DoLine(
                        "Wipe the %s each morning and carry the water out".formatted(findings.words(warning.subject())),
                        "water ran on it for %s".formatted(Figures.count(warning.value(), "hour")),
                        Advised.TOUCH));
    }

    private Optional<DoLine> weakDehumidifier() {
        return worst.flatMap(wait -> room(wait).plant().stream()
                .filter(Plant.Dehumidifier.class::isInstance)
                .map(Plant.Dehumidifier.class::cast)
                .filter(machine -> machine.drying() == Plant.Drying.REFRIGERANT)
                .findFirst()
                .flatMap(machine -> weak(wait, machine)));
    }

    private static Optional<DoLine> weak(Waiting wait, Plant.Dehumidifier machine) {
        int on = wait.count(hour -> machine.on().isOn(wait.history().times().get(hour)));
        double caught = wait.sum(hour -> wait.room().dehumidifierKgPerS().at(hour)) * Units.SECONDS_PER_HOUR;
        double perDay = caught / on * 24.0;
        double plate = machine.ratedKgPerS() * Units.SECONDS_PER_DAY;
        if (on < 24 || perDay > A_THIRD * plate) {
            return Optional.empty();
        }
        return Optional.of(new DoLine(
                "Change the %s for a desiccant one, or warm the room first".formatted(machine.name()),
                "in this cold it catches %s litres a day, not the %s on its plate"
                        .formatted(Figures.litres(perDay), Figures.plain(plate)),
                Advised.DEHUMIDIFY,
                Advised.HEAT));
    }

    private Optional<DoLine> wallFull() {
        return worstOf(Warning.Kind.WALL_FULL, true)
                .map(warning -> new DoLine(
                        "Find and stop the water that comes up the %s".formatted(findings.words(warning.subject())),
                        "it was full and could not take %s litres more".formatted(Figures.litres(warning.value()))));
    }

    private Optional<DoLine> wetLath() {
        return worstOf(Warning.Kind.WET_LATH, true)
                .map(warning -> new DoLine(
                        "Have the laths of the %s looked at before they are covered"
                                .formatted(findings.words(warning.subject())),
                        "they held up to %s %% of their mass in water".formatted(Figures.whole(warning.value()))));
    }

    private Optional<DoLine> tooCold() {
        return worstOf(Warning.Kind.TOO_COLD, true)
                .map(warning -> new DoLine(
                        "Keep the %s above the cold line while the coat firms"
                                .formatted(findings.words(warning.subject())),
                        "it was below for %s".formatted(Figures.count(warning.value(), "hour")),
                        Advised.HEAT));
    }

    private DoLine handTest() {
        Optional<Coat> next = findings.coats().stream()
                .filter(coat -> !coat.result().byHand() && coat.result().laid().isPresent())
                .max(Comparator.comparing(coat -> coat.wait(findings.outcome().reached())));
        return next.flatMap(coat -> coat.firstDate()
                        .map(date -> new DoLine(
                                "Test the %s by hand from %s"
                                        .formatted(coat.label(), days.textWithoutWeekday(days.date(date))),
                                "nail marks it, knuckle does not; enter the result, it overrules these dates",
                                Advised.TOUCH)))
                .orElseGet(() -> new DoLine(
                        "Test by hand each week and enter the result", "it overrules these dates", Advised.TOUCH));
    }

    private Optional<Waiting> slow() {
        return worst.filter(wait -> wait.coat().isUnready() || wait.days() > WhySlow.NOT_SLOW_DAYS);
    }

    private RoomPlan room(Waiting wait) {
        return findings.scenario().rooms().stream()
                .filter(room -> room.name().equals(wait.room().room()))
                .findFirst()
                .orElseThrow();
    }

    private Optional<String> openings(Waiting wait) {
        return room(wait).openings().stream()
                .filter(opening -> opening.toRoom().isEmpty())
                .map(Opening::name)
                .limit(2)
                .reduce((one, other) -> one + " and the " + other);
    }

    private static String openWords(double hoursPerDay) {
        return hoursPerDay < 0.05
                ? "nothing stood open"
                : "something stood open for %s hours a day".formatted(Figures.oneDecimal(hoursPerDay));
    }

    private static double openHoursPerDay(Waiting wait) {
        return wait.sum(hour -> wait.room().openShare().at(hour)) / wait.days();
    }

    private Optional<Warning> worstOf(Warning.Kind kind, boolean highest) {
        Comparator<Warning> byValue = Comparator.comparingDouble(Warning::value);
        return findings.warnings().stream()
                .map(WarningGroup::warning)
                .filter(warning -> warning.kind() == kind)
                .max(highest ? byValue : byValue.reversed());
    }

    private String day(Warning warning) {
        return days.brief(days.date(warning.from()));
    }
}
