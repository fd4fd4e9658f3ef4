package org.limedry.cli.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.DryingChart;
import org.limedry.cli.chart.Ready;
import org.limedry.cli.chart.Timeline;
import org.limedry.cli.chart.WallAndDewPointChart;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.units.Units;
import org.limedry.wall.WallPlan;

/** The charts of drying and of wall and dew point, filled from the run; each title is true by its figures. */
final class Pictures {
    /** More points than this cannot be told apart in a chart. */
    private static final int MOST_POINTS = 500;

    private static final Duration FROM_THE_START = Duration.ofDays(1);
    private static final int MOST_UPRIGHTS = 2;

    private final Findings findings;
    private final Days days;
    private final Timeline timeline;

    Pictures(Findings findings) {
        this.findings = findings;
        this.days = findings.days();
        this.timeline = new Timeline(
                findings.scenario().from(),
                findings.outcome().reached(),
                findings.notes().zone());
    }

    /**
     * Returns the chart of water left in coats.
     *
     * @param id tells it from the other charts on its page
     * @param worstFirst the coats, worst first
     * @param rooms the rooms whose plant is marked
     * @return nothing if there is no coat
     */
    Optional<DryingChart> drying(String id, List<Coat> worstFirst, List<RoomPlan> rooms) {
        if (worstFirst.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DryingChart(
                id,
                dryingTitle(worstFirst.get(0)),
                timeline,
                worstFirst.stream().map(this::coat).toList(),
                List.of(),
                uprights(rooms)));
    }

    private String dryingTitle(Coat worst) {
        String wall = Names.capital(worst.label());
        if (worst.result().laid().isEmpty()) {
            return wall + " was not laid by " + days.brief(days.lastDay(timeline.to()));
        }
        Waiting wait = Waiting.of(findings, worst);
        double laid = worst.result().waterLaidKgPerM2();
        double left = laid - wait.lostLitres() / wait.wall().areaM2();
        String until = worst.result()
                .ready()
                .map(ready -> "on " + days.brief(days.date(ready)))
                .orElse("on " + days.brief(days.lastDay(timeline.to())) + ", not yet ready");
        return "%s: of %s litres laid in each m\u00b2, %s were left %s"
                .formatted(wall, Figures.oneDecimal(laid), Figures.oneDecimal(left), until);
    }

    private DryingChart.Coat coat(Coat coat) {
        return new DryingChart.Coat(
                coat.wall(),
                Names.ordinal(coat.plan().number()) + " coat",
                coat.result().laid(),
                coat.result().laid().map(laid -> points(coat, laid)).orElse(List.of()),
                ready(coat));
    }

    private List<DryingChart.Point> points(Coat coat, Instant laid) {
        History history = findings.outcome().history();
        History.CoatHours hours = history.coats().get(coat.index());
        int[] after = IntStream.range(0, history.times().size())
                .filter(hour -> history.times().get(hour).isAfter(laid))
                .toArray();
        int step = 1 + after.length / MOST_POINTS;
        List<DryingChart.Point> points = new ArrayList<>();
        points.add(new DryingChart.Point(laid, coat.result().waterLaidKgPerM2()));
        for (int i = 0; i < after.length; i++) {
            if (i % step == 0 || i == after.length - 1) {
                points.add(new DryingChart.Point(
                        history.times().get(after[i]), hours.waterKgPerM2().at(after[i])));
            }
        }
        return points;
    }

    private static Ready ready(Coat coat) {
        Optional<Instant> likely = coat.result().ready();
        if (coat.result().byHand() && likely.isPresent()) {
            return new Ready.ByHand(likely.get());
        }
        return coat.range()
                .<Ready>map(range -> new Ready.Range(range.earliest(), likely, range.latest()))
                .orElseGet(() -> new Ready.LikelyOnly(likely));
    }

    private List<DryingChart.Upright> uprights(List<RoomPlan> rooms) {
        return rooms.stream()
                .flatMap(room -> room.plant().stream())
                .filter(plant -> plant instanceof Plant.Heater || plant instanceof Plant.Dehumidifier)
                .flatMap(plant -> broughtIn(plant).stream())
                .distinct()
                .limit(MOST_UPRIGHTS)
                .toList();
    }

    private Optional<DryingChart.Upright> broughtIn(Plant plant) {
        String what = plant instanceof Plant.Heater ? "heater" : "dehumidifier";
        return plant.on().spans().stream()
                .findFirst()
                .map(span -> span.from())
                .filter(from -> from.isAfter(timeline.from().plus(FROM_THE_START)) && from.isBefore(timeline.to()))
                .map(from -> new DryingChart.Upright(from, what + " in, " + days.brief(days.date(from))));
    }

    /**
     * Returns the chart of the coldest wall of a room against the dew point of its air.
     *
     * @param id tells it from the other charts on its page
     * @param room the room
     * @return nothing if the room has no wall that drinks, or the run is too short
     */
    Optional<WallAndDewPointChart> wallAndDewPoint(String id, RoomPlan room) {
        History history = findings.outcome().history();
        History.RoomHours air = history.rooms().stream()
                .filter(hours -> hours.room().equals(room.name()))
                .findFirst()
                .orElseThrow();
        return coldest(room.name())
                .filter(face -> history.times().size() > 1)
                .map(face -> new WallAndDewPointChart(
                        id,
                        dewTitle(face),
                        timeline,
                        findings.words(face.wall()),
                        IntStream.range(0, history.times().size())
                                .mapToObj(hour -> hour(hour, face, air))
                                .toList(),
                        new WallAndDewPointChart.PlantWords(heaterWords(room), dehumidifierWords(room))));
    }

    private WallAndDewPointChart.Hour hour(int hour, History.FaceHours face, History.RoomHours air) {
        return new WallAndDewPointChart.Hour(
                findings.outcome().history().times().get(hour),
                face.celsius().at(hour),
                air.dewPointCelsius().at(hour),
                Math.min(1.0, air.openShare().at(hour)), // a whole hour summed up from steps may pass 1 by rounding
                air.heaterWatts().at(hour) > 0.0 ? 1.0 : 0.0,
                air.dehumidifierKgPerS().at(hour) > 0.0 ? 1.0 : 0.0);
    }

    private String dewTitle(History.FaceHours face) {
        double wet = findings.outcome().faces().stream()
                .filter(result ->
                        result.wall().equals(face.wall()) && result.room().equals(face.room()))
                .mapToDouble(Outcome.FaceResult::dewHours)
                .findFirst()
                .orElse(0.0);
        String wall = Names.capital(findings.words(face.wall()));
        double all = Units.hoursFromSeconds(
                (double) Duration.between(timeline.from(), timeline.to()).toSeconds());
        return Math.round(wet) == 0
                ? wall + ": the coldest wall, and the dew point never reached it"
                : "%s: wet for %s of %s, when the dew point reached it"
                        .formatted(wall, Figures.whole(wet), Figures.count(all, "hour"));
    }

    /** Returns the face with the lowest mean temperature; glass and floors are not walls. */
    private Optional<History.FaceHours> coldest(String room) {
        return findings.outcome().history().faces().stream()
                .filter(face -> face.room().equals(room))
                .filter(face -> isWall(findings.wall(face.wall()).kind()))
                .min(Comparator.comparingDouble(Pictures::meanCelsius));
    }

    private static boolean isWall(WallPlan.Kind kind) {
        return kind != WallPlan.Kind.PANE && kind != WallPlan.Kind.FLOOR;
    }

    private static double meanCelsius(History.FaceHours face) {
        return IntStream.range(0, face.celsius().size())
                .mapToDouble(face.celsius()::at)
                .average()
                .orElse(0.0);
    }

    private static String heaterWords(RoomPlan room) {
        return plant(room, Plant.Heater.class)
                .map(heater -> Figures.plain(heater.watts() / Units.wattsFromKw(1.0)) + " kW")
                .findFirst()
                .orElse("");
    }

    private static String dehumidifierWords(RoomPlan room) {
        return plant(room, Plant.Dehumidifier.class)
                .map(machine -> Figures.plain(machine.ratedKgPerS() * Units.SECONDS_PER_DAY) + " litres a day rated")
                .findFirst()
                .orElse("");
    }

    private static <T extends Plant> Stream<T> plant(RoomPlan room, Class<T> kind) {
        return room.plant().stream().filter(kind::isInstance).map(kind::cast);
    }
}
