package org.limedry.cli.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Function;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Problems;
import org.limedry.cli.site.schema.YamlTree;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Mix;
import org.limedry.lime.MortarChoice;
import org.limedry.material.Material;
import org.limedry.material.MaterialSheet;
import org.limedry.room.RoomPlan;
import org.limedry.room.Surfaces;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.units.Units;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.WallPlan;

/** The demo with one thing changed. */
final class DemoChanges {
    static final Path DEMO = Path.of("../docs/examples/net-loft.yaml");

    private final String demo;

    DemoChanges() {
        try {
            demo = Files.readString(DEMO);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Scenario asItIs() {
        return scenario(Function.identity());
    }

    Scenario scenario(Function<String, String> change) {
        return Examples.site(change.apply(demo)).scenario(Draw.likely());
    }

    Scenario replaced(String from, String to) {
        if (!demo.contains(from)) {
            throw new IllegalStateException("the demo no longer says: " + from);
        }
        return scenario(text -> text.replace(from, to));
    }

    Scenario withLine(String block, String line) {
        return scenario(text -> text + "\n" + block + ": " + line + "\n");
    }

    static String plain(double value) {
        return String.format(Locale.ROOT, "%.6g", value);
    }

    Scenario madeUpFacesAt(double relativeHumidity) {
        Scenario asItIs = asItIs();
        double kelvinPa = -1000.0 * 461.5 * Units.kelvin(10.0) * Math.log(relativeHumidity);
        double usualPa = -1000.0 * 461.5 * Units.kelvin(10.0) * Math.log(0.90);
        return walls(
                asItIs,
                wall -> wall.kind() == WallPlan.Kind.LISTED
                        ? wall
                        : layers(
                                wall,
                                layer -> new LayerPlan(
                                        layer.name(),
                                        layer.material(),
                                        layer.thicknessM(),
                                        layer.startCelsius(),
                                        layer.startSuctionPa() * kelvinPa / usualPa)));
    }

    /** A mix, the material of its coat, and the mortar it makes when nothing is changed. */
    record Usual(MaterialSheet sheet, CoatMortar usual) {}

    Scenario mortars(Function<Usual, MortarChoice> choose) {
        Library library = Library.load();
        return coats(plan -> {
            Mix mix = mix(plan.mortar().name());
            MaterialSheet sheet = library.catalogue().sheet(library.mortars().materialName(mix));
            MortarChoice choice = choose.apply(new Usual(sheet, plan.mortar()));
            return withMortar(plan, library.mortars().mortar(mix, choice));
        });
    }

    Mix mix(String name) {
        Problems problems = new Problems("net-loft.yaml");
        Entry mixes = YamlTree.parse(demo, problems)
                .flatMap(root -> SiteKeys.BLOCK.read(root, problems.root()))
                .map(site -> site.get(SiteKeys.MIXES).get(name))
                .orElseThrow();
        return Mixes.of(name, mixes);
    }

    static CoatMortar with(CoatMortar mortar, double boundKgPerM3, double carbonationMPerSqrtS) {
        return new CoatMortar(
                mortar.name(),
                mortar.material(),
                mortar.freeWaterKgPerM3(),
                mortar.calciumHydroxideKgPerM3(),
                boundKgPerM3,
                mortar.settingActivationJPerMol(),
                mortar.isHaired(),
                carbonationMPerSqrtS);
    }

    static CoatPlan withMortar(CoatPlan plan, CoatMortar mortar) {
        return new CoatPlan(
                plan.wall(),
                plan.number(),
                mortar,
                plan.thicknessM(),
                plan.laidCelsius(),
                plan.prewettingKgPerM2(),
                plan.laying());
    }

    Scenario coats(Function<CoatPlan, CoatPlan> change) {
        Scenario s = asItIs();
        return new Scenario(
                s.site(),
                s.from(),
                s.until(),
                s.outdoors(),
                s.courses(),
                s.rooms(),
                s.walls(),
                s.coats().stream().map(change).toList(),
                s.rule(),
                s.handTests(),
                s.physics(),
                s.accuracy());
    }

    static Scenario walls(Scenario s, Function<WallPlan, WallPlan> change) {
        return new Scenario(
                s.site(),
                s.from(),
                s.until(),
                s.outdoors(),
                s.courses(),
                s.rooms(),
                s.walls().stream().map(change).toList(),
                s.coats(),
                s.rule(),
                s.handTests(),
                s.physics(),
                s.accuracy());
    }

    static WallPlan layers(WallPlan wall, Function<LayerPlan, LayerPlan> change) {
        return new WallPlan(
                wall.name(),
                wall.kind(),
                wall.areaM2(),
                wall.layers().stream().map(change).toList(),
                wall.outside(),
                wall.inside(),
                wall.risingDampKgPerS());
    }

    Scenario assumed(String key, double value) {
        return withLine("assume", "{" + key + ": " + plain(value) + "}");
    }

    Scenario conductivity(String material, double factor) {
        return walls(
                asItIs(),
                wall -> layers(wall, layer -> {
                    Material m = layer.material();
                    if (!m.name().equals(material)) {
                        return layer;
                    }
                    return new LayerPlan(
                            layer.name(),
                            new Material(
                                    m.name(),
                                    m.retention(),
                                    m.liquid(),
                                    m.vapourPermeabilityKgPerMSPa(),
                                    water -> m.conductivityWPerMK().at(water) * factor,
                                    m.dryHeatCapacityJPerM3K()),
                            layer.thicknessM(),
                            layer.startCelsius(),
                            layer.startSuctionPa());
                }));
    }

    static RoomPlan with(RoomPlan room, double fittingsJPerK, double earthKgPerM2S) {
        return new RoomPlan(
                room.name(),
                room.volumeM3(),
                room.floorAreaM2(),
                room.heightM(),
                fittingsJPerK,
                room.leakagePerHour(),
                earthKgPerM2S,
                room.openings(),
                room.plant(),
                room.startCelsius(),
                room.startRelativeHumidity());
    }

    Scenario rooms(Function<RoomPlan, RoomPlan> change) {
        Scenario s = asItIs();
        return s.withRooms(s.rooms().stream().map(change).toList());
    }

    Scenario faces(Function<Surfaces, Surfaces> change) {
        return physics(p -> new Physics(
                p.constants(),
                change.apply(p.surfaces()),
                p.air(),
                p.airHeat(),
                p.outdoorCarbonDioxidePpm(),
                p.fogFalls()));
    }

    Scenario physics(Function<Physics, Physics> change) {
        Scenario s = asItIs();
        return new Scenario(
                s.site(),
                s.from(),
                s.until(),
                s.outdoors(),
                s.courses(),
                s.rooms(),
                s.walls(),
                s.coats(),
                s.rule(),
                s.handTests(),
                change.apply(s.physics()),
                s.accuracy());
    }
}
