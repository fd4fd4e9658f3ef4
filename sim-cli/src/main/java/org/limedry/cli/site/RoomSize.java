package org.limedry.cli.site;

import java.util.Optional;
import org.limedry.cli.site.schema.Entry;

/**
 * The size of a room. Where the file gives no box, the floor is taken as square for the area of the walls.
 *
 * @param volumeM3 volume, m3
 * @param floorAreaM2 floor area, m2
 * @param heightM mean height, m
 * @param wallAreaM2 area of all walls, openings included, m2
 */
record RoomSize(double volumeM3, double floorAreaM2, double heightM, double wallAreaM2) {
    /** Returns the size of a room without problems. */
    static RoomSize of(Entry room) {
        Optional<Entry> box = room.given(RoomKeys.SIZE);
        Optional<Double> area = room.given(RoomKeys.FLOOR_AREA_M2);
        Optional<Double> volume = room.given(RoomKeys.VOLUME_M3);
        double lengthM = box.map(size -> size.get(RoomKeys.LENGTH_M)).orElseGet(() -> Math.sqrt(area.orElseThrow()));
        double widthM = box.map(size -> size.get(RoomKeys.WIDTH_M)).orElse(lengthM);
        double floorM2 = area.orElse(lengthM * widthM);
        double volumeM3 = volume.orElseGet(() -> floorM2 * box.orElseThrow().get(RoomKeys.HEIGHT_M));
        double heightM = volumeM3 / floorM2;
        return new RoomSize(volumeM3, floorM2, heightM, 2.0 * (lengthM + widthM) * heightM);
    }
}
