package org.limedry.wall;

import org.limedry.numerics.Rodas3;

/**
 * Exchange of one face in the course of a step: flows, their slopes, and what passed.
 *
 * <p>All flows are per m2 of face and positive into the wall, run-off positive away from it.
 */
public final class FaceExchange implements FaceFlow {
    private final Face face = new Face();
    private final double latentHeatJPerKg;
    private final Rodas3.Integral vapourIntegral = new Rodas3.Integral();
    private final Rodas3.Integral heatIntegral = new Rodas3.Integral();
    private final Rodas3.Integral runOffIntegral = new Rodas3.Integral();

    private double vapour;
    private double heat;
    private double runOff;
    private double convection;
    private double radiation;
    private double vapourByLog;
    private double vapourByCelsius;
    private double heatByLog;
    private double heatByCelsius;
    private double runOffByLog;
    private double vapourByAirCelsius;
    private double vapourByAirDensity;
    private double stepVapour;
    private double stepHeat;
    private double stepRunOff;

    FaceExchange(double latentHeatJPerKg) {
        this.latentHeatJPerKg = latentHeatJPerKg;
    }

    /** Returns what the face exchanges with. */
    public Face face() {
        return face;
    }

    @Override
    public double stepVapourKgPerM2() {
        return stepVapour;
    }

    double heatWPerM2() {
        return heat;
    }

    @Override
    public double stepHeatJPerM2() {
        return stepHeat;
    }

    @Override
    public double stepRunOffKgPerM2() {
        return stepRunOff;
    }

    @Override
    public double vapourKgPerM2S() {
        return vapour;
    }

    @Override
    public double convectionWPerM2() {
        return convection;
    }

    @Override
    public double radiationWPerM2() {
        return radiation;
    }

    /** Returns the slope of the vapour flow by ln p of the face, kg/(m2 s). */
    public double vapourByLog() {
        return vapourByLog;
    }

    /** Returns the slope of the vapour flow by the temperature of the face, kg/(m2 s K). */
    public double vapourByCelsius() {
        return vapourByCelsius;
    }

    double runOff() {
        return runOff;
    }

    double heatByLog() {
        return heatByLog;
    }

    double heatByCelsius() {
        return heatByCelsius;
    }

    double runOffByLog() {
        return runOffByLog;
    }

    double vapourRate() {
        return face.vapourTransferSPerM * face.airVapourPaPerS;
    }

    double heatRate() {
        return face.convectionWPerM2K * face.airCelsiusPerS + latentHeatJPerKg * vapourRate();
    }

    /** Writes how the balance of the face node answers to room unknowns (air C, vapour density, radiant C), 2 x 3. */
    void coupling(double[] to) {
        to[0] = vapourByAirCelsius;
        to[1] = vapourByAirDensity;
        to[2] = 0.0;
        to[3] = face.convectionWPerM2K + latentHeatJPerKg * to[0];
        to[4] = latentHeatJPerKg * to[1];
        to[5] = face.radiationWPerM2K;
    }

    void flows(double faceVapourPa, double faceCelsius, double filmKgPerM2) {
        vapour = face.vapourTransferSPerM * (face.airVapourPa - faceVapourPa);
        convection = face.convectionWPerM2K * (face.airCelsius - faceCelsius);
        radiation = face.radiationWPerM2K * (face.radiantCelsius - faceCelsius);
        heat = convection + radiation + latentHeatJPerKg * vapour;
        runOff = WaterFilm.runOffKgPerM2S(filmKgPerM2);
    }

    void slopes(double byLogPa, double byCelsiusPa, double filmKgPerM2, double filmByLog) {
        vapourByAirCelsius = face.vapourTransferSPerM * face.airVapourByCelsius;
        vapourByAirDensity = face.vapourTransferSPerM * face.airVapourByDensity;
        vapourByLog = -face.vapourTransferSPerM * byLogPa;
        vapourByCelsius = -face.vapourTransferSPerM * byCelsiusPa;
        heatByLog = latentHeatJPerKg * vapourByLog;
        heatByCelsius = -face.convectionWPerM2K - face.radiationWPerM2K + latentHeatJPerKg * vapourByCelsius;
        runOffByLog = WaterFilm.runOffSlopePerS(filmKgPerM2) * filmByLog;
    }

    /** Records a stage: {@code byLog} and {@code byCelsius} are the face's own unknowns, {@code room} the room's. */
    void stage(int i, double stepS, double[] own, double[] room) {
        double rate = vapour
                + vapourByLog * own[0]
                + vapourByCelsius * own[1]
                + vapourByAirCelsius * room[0]
                + vapourByAirDensity * room[1]
                + Rodas3.gamma(i) * stepS * vapourRate();
        vapourIntegral.stage(i, stepS, rate);
        double heatRate = heat
                + heatByLog * own[0]
                + heatByCelsius * own[1]
                + (face.convectionWPerM2K + latentHeatJPerKg * vapourByAirCelsius) * room[0]
                + latentHeatJPerKg * vapourByAirDensity * room[1]
                + face.radiationWPerM2K * room[2]
                + Rodas3.gamma(i) * stepS * heatRate();
        heatIntegral.stage(i, stepS, heatRate);
        runOffIntegral.stage(i, stepS, runOff + runOffByLog * own[0]);
    }

    /** Records a stage of a held face: what flows over the link behind it. */
    void stageHeld(int i, double stepS, double waterRate, double heatRate) {
        vapourIntegral.stage(i, stepS, waterRate);
        heatIntegral.stage(i, stepS, heatRate);
        runOffIntegral.stage(i, stepS, 0.0);
    }

    /** Takes the step; {@code storedKgPerM2} and {@code storedJPerM2} are what the half cell of a held face took up. */
    void accept(double storedKgPerM2, double storedJPerM2) {
        stepVapour = vapourIntegral.overStep() + storedKgPerM2;
        stepHeat = heatIntegral.overStep() + storedJPerM2;
        stepRunOff = runOffIntegral.overStep();
    }
}
