package org.limedry.cli.wallcase;

import java.util.List;
import java.util.Optional;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.climate.AirSeries;
import org.limedry.units.Units;
import org.limedry.wall.Constants;

/** Reads what the two faces look at. */
final class CaseSides {
    /** A fixed face must have a suction: air without any vapour has none. */
    private static final double LEAST_FIXED_RH_PERCENT = 1.0e-6;

    private final CaseTables tables;
    private final Constants constants;
    private final double hours;
    private final List<String> notes;

    CaseSides(CaseTables tables, Constants constants, double hours, List<String> notes) {
        this.tables = tables;
        this.constants = constants;
        this.hours = hours;
        this.notes = notes;
    }

    /** Returns one side, or reports what is wrong with it. */
    Optional<CaseSide> read(Entry side, String name) {
        boolean fixed = side.find(CaseKeys.FIXED).orElse(false);
        boolean sealed = side.find(CaseKeys.SEALED).orElse(false);
        if (fixed && sealed) {
            side.at(CaseKeys.SEALED)
                    .problem("fixed and sealed", "must be one of them: a sealed face lets nothing pass");
            return Optional.empty();
        }
        if (sealed) {
            noteUnused(side, name, "sealed", CaseKeys.CELSIUS, CaseKeys.RH, CaseKeys.SERIES);
            noteUnused(side, name, "sealed", CaseKeys.HEAT_TRANSFER, CaseKeys.VAPOUR_TRANSFER);
            return Optional.of(new CaseSide.Sealed());
        }
        Optional<AirSeries> climate = climate(side, fixed ? LEAST_FIXED_RH_PERCENT : 0.0);
        if (fixed) {
            noteUnused(side, name, "fixed", CaseKeys.HEAT_TRANSFER, CaseKeys.VAPOUR_TRANSFER);
            return climate.map(CaseSide.Fixed::new);
        }
        need(side, CaseKeys.HEAT_TRANSFER);
        need(side, CaseKeys.VAPOUR_TRANSFER);
        Optional<Double> heat = side.given(CaseKeys.HEAT_TRANSFER);
        Optional<Double> vapour = side.given(CaseKeys.VAPOUR_TRANSFER);
        return climate.isPresent() && heat.isPresent() && vapour.isPresent()
                ? Optional.of(new CaseSide.Film(climate.get(), heat.get(), vapour.get()))
                : Optional.empty();
    }

    private Optional<AirSeries> climate(Entry side, double leastRhPercent) {
        if (!side.isGiven(CaseKeys.SERIES)) {
            return steady(side, leastRhPercent);
        }
        if (side.isGiven(CaseKeys.CELSIUS) || side.isGiven(CaseKeys.RH)) {
            side.at(CaseKeys.SERIES).problem("series beside celsius or rhPercent", "must be one or the other");
        }
        return side.given(CaseKeys.SERIES)
                .flatMap(name -> tables.series(name, side.at(CaseKeys.SERIES), leastRhPercent))
                .filter(rows -> covers(side, rows))
                .map(rows -> new AirSeries(WallCase.START, rows, constants.saturation()));
    }

    private Optional<AirSeries> steady(Entry side, double leastRhPercent) {
        need(side, CaseKeys.CELSIUS);
        need(side, CaseKeys.RH);
        Optional<Double> celsius = side.given(CaseKeys.CELSIUS);
        Optional<Double> rh = side.given(CaseKeys.RH);
        if (rh.isPresent() && rh.get() < leastRhPercent) {
            side.at(CaseKeys.RH).problem(CaseReader.text(rh.get()), "must be above 0 at a fixed face");
            return Optional.empty();
        }
        return celsius.isPresent() && rh.isPresent()
                ? Optional.of(
                        AirSeries.steady(celsius.get(), Units.fractionFromPercent(rh.get()), constants.saturation()))
                : Optional.empty();
    }

    private boolean covers(Entry side, List<AirSeries.Row> rows) {
        double first = rows.get(0).hour();
        double last = rows.get(rows.size() - 1).hour();
        boolean covers = first <= 0.0 && last >= hours;
        if (!covers) {
            side.at(CaseKeys.SERIES)
                    .problem(
                            "hours " + CaseReader.text(first) + " to " + CaseReader.text(last),
                            "must cover the run, hours 0 to " + CaseReader.text(hours));
        }
        return covers;
    }

    private static void need(Entry side, Key<?> key) {
        if (!side.isGiven(key)) {
            side.at(key).problem("missing", "needed: " + key.meaning());
        }
    }

    private void noteUnused(Entry side, String name, String how, Key<?>... keys) {
        for (Key<?> key : keys) {
            if (side.isGiven(key)) {
                notes.add("The " + name + " is " + how + ": its " + key.name() + " is not used.");
            }
        }
    }
}
