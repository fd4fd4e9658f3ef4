package org.limedry.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.limedry.lime.Carbonation;
import org.limedry.lime.Frost;
import org.limedry.lime.TooFast;
import org.limedry.material.Catalogue;
import org.limedry.room.PlantState;
import org.limedry.simulation.Spells.Step;
import org.limedry.simulation.Warning.Kind;
import org.limedry.units.Units;
import org.limedry.wall.Background;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.WallColumn;

/** Looks out for what the user must be told. */
final class Watch {
    /** Face humidity above which a face counts as wet for the wet-face frost line. */
    private static final double WET_FACE = 0.95;

    /** Carbon dioxide above which people are harmed, parts per million. */
    private static final double HARMFUL_PPM = 5000.0;

    /** Moisture content of timber above which decay and corrosion begin to threaten, % of dry mass (S63). */
    private static final double WET_LATH_PERCENT = 20.0;

    private final SiteModel model;
    private final Spells spells = new Spells();
    private final MouldWatch mould = new MouldWatch();
    private final double[] softHours;
    private Instant before;

    Watch(SiteModel model, Scenario scenario) {
        this.model = model;
        softHours = new double[model.roomNames().size()];
        before = scenario.from();
    }

    /** Looks at the state after a step. */
    void take(Instant now) {
        Step step = new Step(before, now);
        before = now;
        for (int room = 0; room < softHours.length; room++) {
            lookAtRoom(room, step);
        }
        for (FaceBook face : model.books().faces()) {
            if (!face.column().isAbsorbent() && face.isRunningWet()) {
                spells.note(Kind.GLASS_RUNNING, face.column().plan().name(), step, step.hours(), Double::sum);
            }
        }
        model.columns().forEach(column -> lookAtLath(column, step));
        mould.take(model.books().faces(), step, spells);
        for (CoatCourse coat : model.coats()) {
            if (coat.isOutermost() && model.air().innerRoom(coat.wall()) >= 0) {
                lookAtCoat(coat, step);
            }
        }
    }

    List<Warning> warnings(Instant end) {
        List<Warning> all = new ArrayList<>(spells.all());
        for (CoatCourse coat : model.coats()) {
            String subject = coat.plan().wall();
            if (!coat.isLaid()) {
                all.add(new Warning(
                        Kind.NOT_LAID, subject, end, end, coat.plan().number()));
            } else if (!coat.isReady()) {
                all.add(new Warning(
                        Kind.NOT_READY, subject, end, end, coat.plan().number()));
            }
        }
        if (model.heldBackKg() > 0.0) {
            all.add(new Warning(Kind.WALL_FULL, "", end, end, model.heldBackKg()));
        }
        return all;
    }

    private void lookAtRoom(int room, Step step) {
        String name = model.roomNames().get(room);
        PlantState.Gains gains = model.flows().gains(room, model.system().rooms());
        boolean shut = !model.flows().open(room).anyOpen();
        double burnt = model.system().zone().overStep(room, ZoneTerms.PLANT);
        if (burnt > 0.0) {
            spells.note(Kind.UNFLUED_HEATER, name, step, burnt, Double::sum);
        }
        if (gains.heaterW() > 0.0 && shut) {
            spells.note(Kind.HEAT_WITHOUT_AIR, name, step, condensedKg(room), Double::sum);
        }
        double ppm = model.chemistry().ppm(room);
        if (ppm > HARMFUL_PPM) {
            spells.note(Kind.CARBON_DIOXIDE, name, step, ppm, Math::max);
        }
        if (gains.caughtKgPerS() > 0.0 && shut && ppm < Carbonation.STARVED_PPM) {
            softHours[room] += step.hours();
            if (softHours[room] >= 24.0) {
                spells.note(Kind.DRY_BUT_SOFT, name, step, ppm, Math::min);
            }
        }
    }

    private void lookAtLath(WallColumn column, Step step) {
        List<LayerPlan> layers = column.plan().layers();
        for (int layer = 0; layer < layers.size(); layer++) {
            if (layers.get(layer).material().name().equals(Catalogue.LATH_LAYER)) {
                double dryKgPerM2 =
                        Background.LATH_DRY_KG_PER_M3 * layers.get(layer).thicknessM();
                double percent = Units.percentFromFraction(column.layerWaterKgPerM2(layer) / dryKgPerM2);
                if (percent > WET_LATH_PERCENT) {
                    spells.note(Kind.WET_LATH, column.plan().name(), step, percent, Math::max);
                }
            }
        }
    }

    private double condensedKg(int room) {
        return model.books().faces().stream()
                .filter(face -> face.face().room() == room)
                .mapToDouble(FaceBook::stepCondensedKg)
                .sum();
    }

    private void lookAtCoat(CoatCourse coat, Step step) {
        int room = model.air().innerRoom(coat.wall());
        double ageDays = coat.ageDays(step.until());
        double airCelsius = model.system().rooms().airCelsius(room);
        double faceCelsius = coat.column().innerCelsius();
        String wall = coat.plan().wall();
        if (ageDays <= Frost.LEAST_FROST_FREE_DAYS) {
            Frost.Risk risk = Frost.risk(airCelsius, faceCelsius);
            if (risk == Frost.Risk.AIR) {
                spells.note(Kind.FROST_AIR, wall, step, airCelsius, Math::min);
            } else if (risk == Frost.Risk.WET_FACE && coat.column().innerRelativeHumidity() > WET_FACE) {
                spells.note(Kind.FROST_WET_FACE, wall, step, faceCelsius, Math::min);
            }
        }
        if (!coat.isReady() && airCelsius < Frost.COLD_LINE_CELSIUS) {
            spells.note(Kind.TOO_COLD, wall, step, step.hours(), Double::sum);
        }
        if (ageDays <= TooFast.WATCHED_DAYS) {
            lookForHaste(coat, step, room);
        }
    }

    private void lookForHaste(CoatCourse coat, Step step, int room) {
        double lossKgPerM2H = -coat.column().step().inner().stepVapourKgPerM2() / step.hours();
        RoomUnknowns rooms = model.system().rooms();
        double vapourPa = rooms.vapourPa(room, model.physics().constants().gasConstantVapourJPerKgK());
        double humidity = vapourPa / model.physics().constants().saturation().pressurePa(rooms.airCelsius(room));
        TooFast.Finding finding = TooFast.look(new TooFast.Exposure(
                coat.ageDays(step.until()),
                lossKgPerM2H,
                humidity,
                model.flows().open(room).anyOpen(),
                model.flows().plant(room).aimedAtWall(),
                coat.drawnInFirstHour().orElse(0.0),
                coat.plan().mortar().isHaired()));
        if (finding.level() == TooFast.Level.ACT) {
            spells.note(Kind.TOO_FAST, coat.plan().wall(), step, Math.max(0.0, lossKgPerM2H), Math::max);
        }
    }
}
