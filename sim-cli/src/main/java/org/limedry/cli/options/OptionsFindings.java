package org.limedry.cli.options;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.page.Days;
import org.limedry.cli.site.Rates;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteMeasure;
import org.limedry.room.Fumes;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Warning;
import org.limedry.study.Energy;
import org.limedry.study.EnsembleResult;
import org.limedry.study.options.Options;
import org.limedry.units.Units;
import org.limedry.wall.WallPlan;

/**
 * What the page of options is made from.
 *
 * @param site the site, lasting long enough
 * @param scenario the job as it stands
 * @param base what came of it
 * @param tried each measure with what came of it
 * @param refused measures that were not tried: fuel would burn in a room that is shut or sheeted
 * @param later waiting for another season, if that was tried
 */
record OptionsFindings(
        Site site,
        Scenario scenario,
        EnsembleResult base,
        List<Tried> tried,
        List<SiteMeasure> refused,
        Optional<Wait> later) {
    /**
     * A measure and what came of it.
     *
     * @param measure the measure
     * @param result its runs, on the members of the job as it stands
     */
    record Tried(SiteMeasure measure, EnsembleResult result) {}

    /**
     * The job begun later.
     *
     * @param movedDays by how many days
     * @param result its runs
     */
    record Wait(int movedDays, EnsembleResult result) {}

    /**
     * A measure as it is told.
     *
     * @param tried the measure
     * @param saved days saved
     * @param energy what it uses more than the job as it stands
     * @param litresMore litres that leave more, by air and by machine, up to the time both runs cover
     * @param cost what it costs, waiting saved taken off; empty without the rates it needs
     * @param fumes whether fuel burns in the room air with it
     * @param tied whether it cannot be told apart from the one before it
     * @param warned kinds of warning that the job as it stands does not give
     */
    record Row(
            Tried tried,
            Options.Saved saved,
            Energy energy,
            double litresMore,
            Optional<Double> cost,
            boolean fumes,
            boolean tied,
            Set<Warning.Kind> warned) {
        String name() {
            return tried.measure().measure().name();
        }

        /** Returns what a day saved costs, if it saves any and the rates are known. */
        Optional<Double> costPerDay() {
            return cost.filter(money -> saved.likely() > HARDLY_DAYS).map(money -> money / saved.likely());
        }

        boolean harms() {
            return saved.likely() < -HARDLY_DAYS;
        }
    }

    /** Less than this is no difference. */
    static final double HARDLY_DAYS = 0.5;

    OptionsFindings {
        tried = List.copyOf(tried);
        refused = List.copyOf(refused);
    }

    /** Tells whether a measure would leave fuel burning in the air of a room that is shut or sheeted over. */
    static boolean isDeadly(SiteMeasure measure, Scenario scenario) {
        String room = measure.measure().room();
        List<RoomPlan> rooms = measure.measure().on(scenario).rooms();
        return Fumes.areShutIn(room, rooms) || (measure.measure().shuts() && Fumes.reach(room, rooms));
    }

    /** Tells whether fuel burns in the room air of the job as it stands where something is to be done. */
    boolean fumes() {
        return Stream.concat(
                        rooms().stream(),
                        refused.stream().map(one -> one.measure().room()))
                .anyMatch(room -> Fumes.reach(room, scenario.rooms()));
    }

    Instant end() {
        return scenario.until();
    }

    /** Returns the rooms in which something is done: it is their last coat that counts. */
    Set<String> rooms() {
        return tried.stream()
                .map(one -> one.measure().measure().room())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Options options() {
        Set<String> walls = scenario.walls().stream()
                .filter(wall -> wall.innerRoom().filter(rooms()::contains).isPresent())
                .map(WallPlan::name)
                .collect(Collectors.toSet());
        return new Options(base, walls, end());
    }

    /** Returns the days that waiting saves. */
    Options.Saved saved(Wait wait) {
        return options().saved(wait.result(), wait.movedDays());
    }

    boolean ranged() {
        return !base.members().isEmpty();
    }

    Days days() {
        return Days.of(site.zone(), scenario.from(), scenario.until());
    }

    /** Returns when the last coat of those rooms is ready as it stands, if it is. */
    Optional<Instant> ready() {
        return options().ready(base.likely());
    }

    /** Returns the measures, those that save most first. */
    List<Row> rows() {
        Options options = options();
        List<Tried> ranked = tried.stream()
                .sorted(Comparator.comparingDouble(
                        (Tried one) -> -options.saved(one.result(), 0).likely()))
                .toList();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < ranked.size(); i++) {
            boolean tied = i > 0
                    && options.isTie(ranked.get(i - 1).result(), ranked.get(i).result());
            rows.add(row(ranked.get(i), tied));
        }
        return rows;
    }

    private Row row(Tried one, boolean tied) {
        Options.Saved saved = options().saved(one.result(), 0);
        Scenario changed = one.measure().measure().on(scenario);
        Outcome outcome = one.result().likely();
        Energy energy = Energy.of(changed, outcome).minus(Energy.of(scenario, base.likely()));
        Set<Warning.Kind> warned = kinds(outcome);
        warned.removeAll(kinds(base.likely()));
        return new Row(
                one,
                saved,
                energy,
                gone(outcome) - gone(base.likely()),
                cost(one, saved, energy),
                Fumes.reach(one.measure().measure().room(), changed.rooms()),
                tied,
                warned);
    }

    private static Set<Warning.Kind> kinds(Outcome outcome) {
        return outcome.warnings().stream().map(Warning::kind).collect(Collectors.toSet());
    }

    private static double gone(Outcome outcome) {
        return outcome.account().outByAirKg() + outcome.account().dehumidifierKg();
    }

    private Optional<Double> cost(Tried one, Options.Saved saved, Energy energy) {
        Optional<Rates> rates = site.rates();
        if (rates.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> electricity = priced(energy.electricKWh(), rates.get().electricityPerKWh());
        Optional<Double> fuel = priced(energy.fuelKWh(), rates.get().fuelPerKWh());
        double days = Units.daysFromSeconds(
                (double) Duration.between(scenario.from(), one.result().likely().reached())
                        .toSeconds());
        SiteMeasure measure = one.measure();
        double other = measure.once()
                + days * measure.hirePerDay()
                + days * measure.labourHoursPerDay() * rates.get().labourPerHour()
                - saved.likely() * rates.get().waitingPerDay();
        return electricity.flatMap(power -> fuel.map(burnt -> power + burnt + other));
    }

    private static Optional<Double> priced(double kWh, Optional<Double> rate) {
        return Math.abs(kWh) < 0.5 ? Optional.of(0.0) : rate.map(money -> money * kWh);
    }

    /** Tells whether every likely run is ready by its end. */
    boolean allReady() {
        return ready().isPresent();
    }
}
