package org.limedry.simulation;

import java.util.ArrayList;
import java.util.List;
import org.limedry.simulation.Ledger.Stores;
import org.limedry.simulation.Ledger.Term;
import org.limedry.wall.WallColumn;

/** The water account of every room and of walls without a room, kept step by step. */
final class Books {
    private final List<WallColumn> columns;
    private final FaceAir air;
    private final CoupledSystem system;
    private final double[] volumeM3;
    private final List<Ledger> ledgers = new ArrayList<>();
    private final List<FaceBook> faces = new ArrayList<>();
    private final List<Stores> start = new ArrayList<>();

    Books(List<WallColumn> columns, FaceAir air, CoupledSystem system, double[] volumeM3, List<FaceBook> faces) {
        this.columns = columns;
        this.air = air;
        this.system = system;
        this.volumeM3 = volumeM3;
        this.faces.addAll(faces);
        for (int room = 0; room <= volumeM3.length; room++) {
            ledgers.add(new Ledger());
            start.add(stores(room));
        }
    }

    List<FaceBook> faces() {
        return faces;
    }

    /** Returns the ledger of the room a wall is listed under. */
    Ledger ofWall(int wall) {
        return ledgers.get(owner(wall));
    }

    /** Takes a step that has been accepted. */
    void take(double stepS, double gasConstantVapourJPerKgK) {
        for (int room = 0; room < volumeM3.length; room++) {
            takeRoom(ledgers.get(room), room);
        }
        for (int wall = 0; wall < columns.size(); wall++) {
            takeWall(wall);
        }
        for (FaceBook face : faces) {
            face.take(stepS, system.rooms().vapourPa(face.face().room(), gasConstantVapourJPerKgK));
        }
    }

    WaterAccount ofSite() {
        Ledger sum = new Ledger();
        Stores from = new Stores(0.0, 0.0, 0.0, 0.0);
        Stores until = from;
        for (int room = 0; room <= volumeM3.length; room++) {
            sum.addAll(ledgers.get(room));
            from = from.plus(start.get(room));
            until = until.plus(stores(room));
        }
        return sum.account(from, until, condensedKg(-1), suckedBackKg(-1));
    }

    WaterAccount ofRoom(int room) {
        return ledgers.get(room).account(start.get(room), stores(room), condensedKg(room), suckedBackKg(room));
    }

    private int owner(int wall) {
        return air.innerRoom(wall) < 0 ? volumeM3.length : air.innerRoom(wall);
    }

    private void takeRoom(Ledger ledger, int room) {
        ZoneStep zone = system.zone();
        ledger.add(Term.OUT_BY_AIR, zone.overStep(room, ZoneTerms.OUT_BY_AIR));
        ledger.add(Term.BETWEEN_ROOMS, zone.overStep(room, ZoneTerms.TO_ROOMS));
        ledger.add(Term.DEHUMIDIFIER, zone.overStep(room, ZoneTerms.DEHUMIDIFIER));
        ledger.add(Term.PLANT, zone.overStep(room, ZoneTerms.PLANT));
        ledger.add(Term.PEOPLE, zone.overStep(room, ZoneTerms.PEOPLE));
        ledger.add(Term.GROUND, zone.overStep(room, ZoneTerms.GROUND));
        ledger.add(Term.RUN_OFF, zone.overStep(room, ZoneTerms.FOG));
    }

    private void takeWall(int wall) {
        WallColumn column = columns.get(wall);
        double area = column.plan().areaM2();
        Ledger own = ofWall(wall);
        double inner = area * column.step().inner().stepVapourKgPerM2();
        double outer = area * column.step().outer().stepVapourKgPerM2();
        own.add(Term.THROUGH_WALLS, -outer);
        if (air.outerRoom(wall) >= 0) {
            ledgers.get(air.outerRoom(wall)).add(Term.THROUGH_WALLS, outer);
        }
        if (air.innerRoom(wall) < 0) {
            own.add(Term.THROUGH_WALLS, -inner);
        }
        double ranOff = column.step().inner().stepRunOffKgPerM2()
                + column.step().outer().stepRunOffKgPerM2();
        own.add(Term.RUN_OFF, area * ranOff);
    }

    private Stores stores(int room) {
        double airKg = room < volumeM3.length ? volumeM3[room] * system.rooms().vapourKgPerM3(room) : 0.0;
        Stores sum = new Stores(0.0, 0.0, airKg, 0.0);
        for (int wall = 0; wall < columns.size(); wall++) {
            if (owner(wall) == room) {
                WallColumn column = columns.get(wall);
                double area = column.plan().areaM2();
                double coats = column.coatsWaterKgPerM2();
                double film = column.innerFilmKgPerM2() + column.outerFilmKgPerM2();
                sum = sum.plus(new Stores(area * coats, area * (column.waterKgPerM2() - coats), 0.0, area * film));
            }
        }
        return sum;
    }

    private double condensedKg(int room) {
        return faces.stream()
                .filter(face -> room < 0 || face.face().room() == room)
                .mapToDouble(face -> face.result().condensedKg())
                .sum();
    }

    private double suckedBackKg(int room) {
        return faces.stream()
                .filter(face -> room < 0 || face.face().room() == room)
                .mapToDouble(face -> face.result().suckedBackKg())
                .sum();
    }
}
