package org.limedry.simulation;

import java.time.Instant;
import java.util.List;

/**
 * What a run looked like, hour by hour.
 *
 * @param times the hours, every 3600 s from the start of the run
 * @param outdoorCelsius outdoor air temperature, C
 * @param outdoorRelativeHumidity outdoor relative humidity, fraction
 * @param rooms one entry for each room of the scenario, in its order
 * @param faces one entry for each room-side face, in the order of the walls
 * @param coats one entry for each coat of the scenario, in its order
 */
public record History(
        List<Instant> times,
        Series outdoorCelsius,
        Series outdoorRelativeHumidity,
        List<RoomHours> rooms,
        List<FaceHours> faces,
        List<CoatHours> coats) {
    public History {
        times = List.copyOf(times);
        rooms = List.copyOf(rooms);
        faces = List.copyOf(faces);
        coats = List.copyOf(coats);
    }

    /**
     * A room, hour by hour.
     *
     * @param room its name
     * @param airCelsius air temperature, C
     * @param relativeHumidity relative humidity of its air over water, fraction; may pass 1 by a little
     * @param dewPointCelsius dew point of its air over water, C
     * @param carbonDioxidePpm carbon dioxide, parts per million
     * @param freshAirM3PerS outdoor air coming in, m3/s
     * @param openShare share of the hour past during which any opening to outdoors stood open, fraction
     * @param heaterWatts heat given by heaters, W
     * @param dehumidifierKgPerS water caught, kg/s
     */
    public record RoomHours(
            String room,
            Series airCelsius,
            Series relativeHumidity,
            Series dewPointCelsius,
            Series carbonDioxidePpm,
            Series freshAirM3PerS,
            Series openShare,
            Series heaterWatts,
            Series dehumidifierKgPerS) {}

    /**
     * A room-side face, hour by hour.
     *
     * @param wall its wall
     * @param room the room it faces
     * @param celsius its temperature, C
     * @param relativeHumidity relative humidity in its pores, fraction
     * @param filmKgPerM2 water film it carries, kg/m2
     * @param vapourKgPerM2S vapour it takes up from the room, kg/(m2 s); negative when it dries
     */
    public record FaceHours(
            String wall,
            String room,
            Series celsius,
            Series relativeHumidity,
            Series filmKgPerM2,
            Series vapourKgPerM2S) {}

    /**
     * A coat, hour by hour; before it is laid every value is 0.
     *
     * @param wall its wall
     * @param number its number on that wall
     * @param waterKgPerM2 water in it, kg/m2
     * @param meanSuctionPa geometric mean suction, Pa
     * @param equivalentAgeDays age at 20 C, days
     * @param carbonatedM depth hard right through to, m
     */
    public record CoatHours(
            String wall,
            int number,
            Series waterKgPerM2,
            Series meanSuctionPa,
            Series equivalentAgeDays,
            Series carbonatedM) {}
}
