package org.limedry.cli.report;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.simulation.Outcome;

/**
 * Names of faces: that of the wall, with the room behind it where a wall between two rooms has two.
 *
 * @param facesOfWall how many faces each wall has
 */
record FaceNames(Map<String, Long> facesOfWall) {
    static FaceNames of(List<Outcome.FaceResult> faces) {
        return new FaceNames(faces.stream()
                .map(Outcome.FaceResult::wall)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting())));
    }

    /** Returns the name of the face that a wall turns to a room. */
    String name(String wall, String room) {
        return facesOfWall.getOrDefault(wall, 1L) > 1 ? wall + " (" + room + ")" : wall;
    }
}
