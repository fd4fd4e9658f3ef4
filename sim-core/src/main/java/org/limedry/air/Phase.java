package org.limedry.air;

/** What vapour is in balance with: liquid water (supercooled below 0 °C) or ice. */
public enum Phase {
    WATER,
    ICE
}
