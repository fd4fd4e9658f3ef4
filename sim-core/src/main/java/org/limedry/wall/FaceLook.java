package org.limedry.wall;

/**
 * One face of a wall at one instant; flows are positive into the wall.
 *
 * @param celsius temperature, C
 * @param relativeHumidity relative humidity in its pores, fraction
 * @param waterKgPerM2S water flow, kg/(m2 s): vapour, and at a held face liquid
 * @param heatWPerM2 heat flow, latent heat of vapour included, W/m2
 */
public record FaceLook(double celsius, double relativeHumidity, double waterKgPerM2S, double heatWPerM2) {}
