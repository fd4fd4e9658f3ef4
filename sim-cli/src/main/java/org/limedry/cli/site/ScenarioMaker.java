package org.limedry.cli.site;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.limedry.air.StandardAtmosphere;
import org.limedry.climate.WeatherRecord;
import org.limedry.climate.WeatherSeries;
import org.limedry.lime.ReadinessRule;
import org.limedry.room.AirExchange;
import org.limedry.room.RoomPlan;
import org.limedry.room.Surfaces;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.units.Units;
import org.limedry.wall.WallPlan;

/** From a site file to a run, for one way in which the unknowns may lie. */
final class ScenarioMaker {
    /** The run begins at the mean of these days outdoors. */
    private static final int START_MEAN_HOURS = 240;

    private final SiteParts parts;
    private final Materials materials;
    private final Guesses guesses;
    private final int movedDays;

    ScenarioMaker(SiteParts parts, Materials materials, Guesses guesses, int movedDays) {
        this.parts = parts;
        this.materials = materials;
        this.guesses = guesses;
        this.movedDays = movedDays;
    }

    /** Returns the run; the draw is what the ranges of the site leave open, whatever was learnt of them. */
    Scenario scenario(Draw prior) {
        Draw draw = parts.fitted().map(file -> file.fitted().apply(prior)).orElse(prior);
        if (!(weather(draw) instanceof WeatherRecord.Covered covered)) {
            throw new IllegalArgumentException("draw: must lie where the weather reaches, was " + draw);
        }
        double meanCelsius = startCelsius(covered.outdoors());
        CoatPlans coats = new CoatPlans(parts, guesses, draw);
        return new Scenario(
                parts.entry().get(SiteKeys.SITE),
                parts.days().from(),
                parts.days().until(),
                covered.outdoors(),
                Map.of(),
                roomPlans(meanCelsius, draw),
                wallPlans(meanCelsius, draw),
                coats.coats(),
                rule(draw),
                movedDays == 0 ? coats.handTests() : List.of(),
                physics(draw),
                Accuracy.ordinary());
    }

    private WeatherRecord.Cover weather(Draw draw) {
        WeatherRecord.Cover guessed = guessedWeather(draw);
        return happened()
                .filter(read -> guessed instanceof WeatherRecord.Covered)
                .<WeatherRecord.Cover>map(read -> new WeatherRecord.Covered(
                        read.weather(((WeatherRecord.Covered) guessed).outdoors(), usualWeather())))
                .orElse(guessed);
    }

    private WeatherSeries usualWeather() {
        if (weather(0) instanceof WeatherRecord.Covered covered) {
            return covered.outdoors();
        }
        throw new IllegalStateException("a site has weather on its own dates");
    }

    /** Returns what was read, which belongs to its own days: a job moved to another season has none. */
    private Optional<SiteReadings> happened() {
        return parts.readings().filter(read -> movedDays == 0);
    }

    private WeatherRecord.Cover guessedWeather(Draw draw) {
        if (!draw.quantiles().containsKey(Site.OTHER_WEATHER)) {
            return weather(Math.toIntExact(Math.round(guesses.weatherShift().in(draw))));
        }
        return parts.weather()
                .other(parts.entry().get(SiteKeys.PLACE), parts.days(), movedDays, draw.quantile(Site.OTHER_WEATHER));
    }

    /** Returns the weather over the run, taken later by some days. */
    WeatherRecord.Cover weather(int shiftDays) {
        return parts.weather().over(parts.entry().get(SiteKeys.PLACE), parts.days(), movedDays + shiftDays);
    }

    private double startCelsius(WeatherSeries outdoors) {
        double sum = 0.0;
        int hours = 0;
        Instant end = parts.days().from().plus(Duration.ofHours(START_MEAN_HOURS));
        for (Instant t = parts.days().from();
                t.isBefore(end) && t.isBefore(parts.days().until());
                t = t.plus(Duration.ofHours(1))) {
            sum += outdoors.celsius(t);
            hours++;
        }
        return sum / hours;
    }

    private double startCelsius(String room, double meanCelsius) {
        return Optional.ofNullable(parts.rooms().get(room))
                .flatMap(entry -> entry.given(RoomKeys.START_CELSIUS))
                .orElse(meanCelsius);
    }

    private List<RoomPlan> roomPlans(double meanCelsius, Draw draw) {
        RoomPlans plans = new RoomPlans(parts, guesses, draw);
        List<RoomPlan> rooms = new ArrayList<>();
        parts.rooms().forEach((name, room) -> rooms.add(plans.plan(name, room, startCelsius(name, meanCelsius))));
        return happened()
                .map(read -> rooms.stream()
                        .map(room -> read.room(room, parts.days()))
                        .toList())
                .orElse(rooms);
    }

    private List<WallPlan> wallPlans(double meanCelsius, Draw draw) {
        WallPlans plans = new WallPlans(parts, materials, guesses, draw);
        double soilCelsius = parts.weather().record().meanCelsius();
        return parts.faces().specs().stream()
                .map(spec -> plans.plan(spec, startCelsius(spec.room(), meanCelsius), soilCelsius))
                .toList();
    }

    private ReadinessRule rule(Draw draw) {
        return parts.entry()
                .get(SiteKeys.READY_RULE)
                .with(
                        Guesses.pascals(guesses.readySuction().in(draw)),
                        guesses.readyAge().in(draw),
                        Units.fractionFromPercent(guesses.readyFace().in(draw)));
    }

    private Physics physics(Draw draw) {
        Physics usual = Physics.ordinary();
        Surfaces faces = usual.surfaces();
        AirExchange air = usual.air();
        double stillWPerM2K = guesses.stillAir().in(draw);
        return new Physics(
                usual.constants(),
                new Surfaces(
                        stillWPerM2K,
                        Math.max(stillWPerM2K, faces.doorOpenWPerM2K()),
                        Math.max(stillWPerM2K, faces.aimedWPerM2K()),
                        faces.radiantWPerM2K(),
                        faces.vapourPerConvectionKPerJ(),
                        faces.outsideStillWPerM2K(),
                        faces.outsideWindWPerM2KPerMPerS()),
                new AirExchange(
                        air.balance(),
                        StandardAtmosphere.pressurePa(parts.weather().altitudeM()),
                        guesses.openingFlow().in(draw),
                        air.windPressureDifference(),
                        air.dischargeCoefficient()),
                usual.airHeat(),
                usual.outdoorCarbonDioxidePpm(),
                usual.fogFalls());
    }
}
