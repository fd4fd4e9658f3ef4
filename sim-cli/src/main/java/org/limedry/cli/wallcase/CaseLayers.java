package org.limedry.cli.wallcase;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.limedry.cli.site.schema.Entry;
import org.limedry.material.Material;
import org.limedry.material.SuctionTable;
import org.limedry.units.Units;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;

/** Reads the layers of a wall case with their tables. */
final class CaseLayers {
    private final CaseTables tables;
    private final Constants constants;
    private final Entry whole;

    /** One look at each table however many layers name it; also makes layers of one material one material. */
    private final Map<String, Optional<SuctionTable>> suctionTables = new HashMap<>();

    private final Map<String, Optional<CaseTables.OfWater>> waterTables = new HashMap<>();

    CaseLayers(CaseTables tables, Constants constants, Entry whole) {
        this.tables = tables;
        this.constants = constants;
        this.whole = whole;
    }

    /** Returns the layers that can be read; reports whatever is wrong with the others. */
    List<LayerPlan> read() {
        List<Entry> entries = whole.given(CaseKeys.LAYERS).orElse(List.of());
        checkNames(entries);
        checkOrder(entries);
        List<LayerPlan> layers = new ArrayList<>();
        double depthMm = 0.0;
        for (Entry entry : entries) {
            layer(entry, depthMm).ifPresent(layers::add);
            depthMm += entry.given(CaseKeys.THICKNESS_MM).orElse(0.0);
        }
        return layers;
    }

    private Optional<LayerPlan> layer(Entry entry, double depthMm) {
        Optional<SuctionTable> suction = entry.given(CaseKeys.SUCTION_TABLE)
                .flatMap(name -> suctionTables.computeIfAbsent(
                        name, key -> tables.suction(key, entry.at(CaseKeys.SUCTION_TABLE))));
        Optional<CaseTables.OfWater> water = entry.given(CaseKeys.WATER_TABLE)
                .flatMap(name ->
                        waterTables.computeIfAbsent(name, key -> tables.water(key, entry.at(CaseKeys.WATER_TABLE))));
        Optional<Double> startPa = entry.given(CaseKeys.START_STATE).flatMap(this::startSuctionPa);
        boolean known = entry.given(CaseKeys.NAME).isPresent()
                && entry.given(CaseKeys.THICKNESS_MM).isPresent()
                && entry.given(CaseKeys.DENSITY).isPresent()
                && entry.given(CaseKeys.HEAT_CAPACITY).isPresent();
        if (suction.isEmpty() || water.isEmpty() || startPa.isEmpty() || !known) {
            return Optional.empty();
        }
        Material material = new Material(
                entry.get(CaseKeys.NAME),
                suction.get(),
                suction.get(),
                water.get().permeability(),
                water.get().conductivity(),
                entry.get(CaseKeys.DENSITY) * entry.get(CaseKeys.HEAT_CAPACITY));
        double laidAtHour = entry.find(CaseKeys.LAID_AT).orElse(0.0);
        return Optional.of(new LayerPlan(
                entry.get(CaseKeys.NAME),
                material,
                Units.metresFromMm(entry.get(CaseKeys.THICKNESS_MM)),
                entry.get(CaseKeys.START_STATE).get(CaseKeys.START_CELSIUS),
                startPa.get(),
                laidAtHour > 0.0 ? WallCase.instant(laidAtHour) : Instant.MIN,
                whole.find(CaseKeys.POSITIONS_MM).orElse(List.of()).stream()
                        .map(mm -> Units.metresFromMm(mm - depthMm))
                        .toList()));
    }

    /** Kelvin's law for a start by humidity, which at 100 % is suction 0. */
    private Optional<Double> startSuctionPa(Entry start) {
        Optional<Double> rh = start.given(CaseKeys.START_RH);
        Optional<Double> suction = start.given(CaseKeys.START_SUCTION);
        if (rh.isPresent() && suction.isPresent()) {
            start.at(CaseKeys.START_SUCTION).problem("suctionPa beside rhPercent", "must be one or the other");
            return Optional.empty();
        }
        Optional<Double> celsius = start.given(CaseKeys.START_CELSIUS);
        if (rh.isPresent() && celsius.isPresent()) {
            double relativeHumidity = Units.fractionFromPercent(rh.get());
            return Optional.of(Math.abs(constants.suctionPa(relativeHumidity, celsius.get())));
        }
        return celsius.flatMap(known -> suction);
    }

    private static void checkNames(List<Entry> entries) {
        Map<String, Integer> lines = new HashMap<>();
        for (Entry entry : entries) {
            entry.given(CaseKeys.NAME).ifPresent(name -> {
                int line = entry.at(CaseKeys.NAME).line();
                Integer first = lines.putIfAbsent(name, line);
                if (first != null) {
                    entry.at(CaseKeys.NAME).problem("\"" + name + "\"", "must be unique; first on line " + first);
                }
            });
        }
    }

    private void checkOrder(List<Entry> entries) {
        double before = 0.0;
        for (int k = 0; k < entries.size(); k++) {
            Entry entry = entries.get(k);
            double laid = entry.find(CaseKeys.LAID_AT).orElse(0.0);
            if (k == 0 && laid > 0.0) {
                entry.at(CaseKeys.LAID_AT)
                        .problem(CaseReader.text(laid), "the first layer must be there from the start");
            } else if (laid < before) {
                entry.at(CaseKeys.LAID_AT)
                        .problem(
                                CaseReader.text(laid),
                                "must not be before the layer it is laid on, hour " + CaseReader.text(before));
            }
            double hours = whole.given(CaseKeys.HOURS).orElse(Double.POSITIVE_INFINITY);
            if (laid >= hours) {
                entry.at(CaseKeys.LAID_AT)
                        .problem(
                                CaseReader.text(laid),
                                "must be before the end of the run, hours: " + CaseReader.text(hours));
            }
            before = Math.max(before, laid);
        }
    }
}
