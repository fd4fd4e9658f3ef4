package org.limedry.simulation;

import org.limedry.units.Units;
import org.limedry.wall.Constants;
import org.limedry.wall.FaceExchange;
import org.limedry.wall.WallColumn;

/** Hours and throughputs of one room-side face over a run. */
final class FaceBook {
    private static final double RUNNING_WET_KG_PER_M2 = 0.05;
    private static final double DAMP = 0.98;
    private static final double CONDENSING = 0.985;

    private final RoomFace face;
    private final WallColumn column;
    private final String room;
    private final Constants constants;
    private final double startFilmKgPerM2;
    private double dewS;
    private double runningWetS;
    private double dampS;
    private double condensedKgPerM2;
    private double runOffKgPerM2;
    private double stepCondensedKgPerM2;

    FaceBook(RoomFace face, WallColumn column, String room, Constants constants) {
        this.face = face;
        this.column = column;
        this.room = room;
        this.constants = constants;
        startFilmKgPerM2 = filmKgPerM2();
    }

    RoomFace face() {
        return face;
    }

    WallColumn column() {
        return column;
    }

    double celsius() {
        return face.isInner() ? column.innerCelsius() : column.outerCelsius();
    }

    double relativeHumidity() {
        return column.relativeHumidity(face.isInner() ? column.nodes() - 1 : 0);
    }

    double filmKgPerM2() {
        return face.isInner() ? column.innerFilmKgPerM2() : column.outerFilmKgPerM2();
    }

    FaceExchange exchange() {
        return face.isInner() ? column.step().inner() : column.step().outer();
    }

    double runningWetHours() {
        return Units.hoursFromSeconds(runningWetS);
    }

    /** Returns the vapour condensed in the last step, kg. */
    double stepCondensedKg() {
        return face.areaM2() * stepCondensedKgPerM2;
    }

    boolean isRunningWet() {
        return filmKgPerM2() >= RUNNING_WET_KG_PER_M2;
    }

    /** Takes a step that has been accepted, with the vapour pressure of the room at its end. */
    void take(double stepS, double roomVapourPa) {
        double humidity = relativeHumidity();
        dewS += roomVapourPa >= constants.saturation().pressurePa(celsius()) ? stepS : 0.0;
        runningWetS += isRunningWet() ? stepS : 0.0;
        dampS += humidity > DAMP ? stepS : 0.0;
        stepCondensedKgPerM2 = humidity >= CONDENSING ? Math.max(0.0, exchange().stepVapourKgPerM2()) : 0.0;
        condensedKgPerM2 += stepCondensedKgPerM2;
        runOffKgPerM2 += exchange().stepRunOffKgPerM2();
    }

    Outcome.FaceResult result() {
        double drunk = condensedKgPerM2 - runOffKgPerM2 - (filmKgPerM2() - startFilmKgPerM2);
        boolean absorbent = column.isAbsorbent();
        return new Outcome.FaceResult(
                column.plan().name(),
                room,
                face.areaM2(),
                absorbent,
                Units.hoursFromSeconds(dewS),
                runningWetHours(),
                Units.hoursFromSeconds(dampS),
                face.areaM2() * condensedKgPerM2,
                absorbent ? face.areaM2() * Math.max(0.0, drunk) : 0.0);
    }
}
