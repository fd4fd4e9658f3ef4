package org.limedry.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.limedry.air.SaturationCurve;
import org.limedry.units.Units;

/** Writes the hourly history of a run. */
final class HistoryWriter {
    private static final int WEATHER_COLUMNS = 2;
    private static final int ROOM_COLUMNS = 8;
    private static final int FACE_COLUMNS = 4;
    private static final int COAT_COLUMNS = 4;

    private final SiteModel model;
    private final Recorder recorder;
    private final SaturationCurve saturation;
    private final double[] openS;

    HistoryWriter(SiteModel model, int hours) {
        this.model = model;
        saturation = model.physics().constants().saturation();
        openS = new double[model.roomNames().size()];
        recorder = new Recorder(coatColumn(model.coats().size()), hours);
    }

    /** Counts how long each room stood open during a step. */
    void take(double stepS) {
        for (int room = 0; room < openS.length; room++) {
            openS[room] += model.flows().open(room).anyOpen() ? stepS : 0.0;
        }
    }

    /** Writes the present hour. */
    void write(Instant now, Weather weather) {
        recorder.at(now);
        recorder.put(0, weather.celsius());
        recorder.put(1, weather.vapourPa() / saturation.pressurePa(weather.celsius()));
        for (int room = 0; room < openS.length; room++) {
            writeRoom(room, weather);
        }
        for (int k = 0; k < model.books().faces().size(); k++) {
            writeFace(k, model.books().faces().get(k));
        }
        for (int k = 0; k < model.coats().size(); k++) {
            if (model.coats().get(k).isLaid()) {
                writeCoat(k, model.coats().get(k));
            }
        }
    }

    History history() {
        List<History.RoomHours> rooms = new ArrayList<>();
        for (int k = 0; k < openS.length; k++) {
            int at = roomColumn(k);
            rooms.add(new History.RoomHours(
                    model.roomNames().get(k),
                    recorder.series(at),
                    recorder.series(at + 1),
                    recorder.series(at + 2),
                    recorder.series(at + 3),
                    recorder.series(at + 4),
                    recorder.series(at + 5),
                    recorder.series(at + 6),
                    recorder.series(at + 7)));
        }
        return new History(recorder.times(), recorder.series(0), recorder.series(1), rooms, faceHours(), coatHours());
    }

    private List<History.FaceHours> faceHours() {
        List<History.FaceHours> faces = new ArrayList<>();
        for (int k = 0; k < model.books().faces().size(); k++) {
            FaceBook face = model.books().faces().get(k);
            int at = faceColumn(k);
            faces.add(new History.FaceHours(
                    face.column().plan().name(),
                    model.roomNames().get(face.face().room()),
                    recorder.series(at),
                    recorder.series(at + 1),
                    recorder.series(at + 2),
                    recorder.series(at + 3)));
        }
        return faces;
    }

    private List<History.CoatHours> coatHours() {
        List<History.CoatHours> coats = new ArrayList<>();
        for (int k = 0; k < model.coats().size(); k++) {
            CoatCourse coat = model.coats().get(k);
            int at = coatColumn(k);
            coats.add(new History.CoatHours(
                    coat.plan().wall(),
                    coat.plan().number(),
                    recorder.series(at),
                    recorder.series(at + 1),
                    recorder.series(at + 2),
                    recorder.series(at + 3)));
        }
        return coats;
    }

    private void writeRoom(int room, Weather weather) {
        int at = roomColumn(room);
        RoomUnknowns rooms = model.system().rooms();
        double celsius = rooms.airCelsius(room);
        double vapourPa = rooms.vapourPa(room, model.physics().constants().gasConstantVapourJPerKgK());
        recorder.put(at, celsius);
        recorder.put(at + 1, vapourPa / saturation.pressurePa(celsius));
        recorder.put(at + 2, saturation.celsius(vapourPa));
        recorder.put(at + 3, model.chemistry().ppm(room));
        recorder.put(at + 4, model.flows().freshAirM3PerS(room, rooms, weather));
        recorder.put(at + 5, openS[room] / Units.SECONDS_PER_HOUR);
        recorder.put(at + 6, model.flows().gains(room, rooms).heaterW());
        recorder.put(at + 7, model.flows().gains(room, rooms).caughtKgPerS());
        openS[room] = 0.0;
    }

    private void writeFace(int k, FaceBook face) {
        int at = faceColumn(k);
        recorder.put(at, face.celsius());
        recorder.put(at + 1, face.relativeHumidity());
        recorder.put(at + 2, face.filmKgPerM2());
        recorder.put(at + 3, face.exchange().vapourKgPerM2S());
    }

    private void writeCoat(int k, CoatCourse coat) {
        int at = coatColumn(k);
        int number = coat.plan().number();
        recorder.put(at, coat.column().coatWaterKgPerM2(number));
        recorder.put(at + 1, coat.column().coatMeanSuctionPa(number));
        recorder.put(at + 2, coat.equivalentAgeDays());
        recorder.put(at + 3, coat.carbonatedM());
    }

    private static int roomColumn(int room) {
        return WEATHER_COLUMNS + ROOM_COLUMNS * room;
    }

    private int faceColumn(int face) {
        return roomColumn(openS.length) + FACE_COLUMNS * face;
    }

    private int coatColumn(int coat) {
        return faceColumn(model.books().faces().size()) + COAT_COLUMNS * coat;
    }
}
