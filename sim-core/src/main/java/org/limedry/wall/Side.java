package org.limedry.wall;

/** What a face of a wall looks at. */
public sealed interface Side {
    /** Outdoor air: weather temperature, vapour and wind. */
    record Outdoors() implements Side {}

    /**
     * The air and radiant node of a room.
     *
     * @param room name of the room
     */
    record Room(String room) implements Side {}

    /**
     * Air that never changes.
     *
     * @param celsius temperature, C
     * @param relativeHumidity relative humidity, fraction
     * @param heatTransferWPerM2K surface heat transfer (convection and radiation), W/(m2 K)
     * @param vapourTransferSPerM surface vapour transfer, kg/(m2 s Pa)
     */
    record Air(double celsius, double relativeHumidity, double heatTransferWPerM2K, double vapourTransferSPerM)
            implements Side {}

    /**
     * Air that runs its own course, with stated transfer.
     *
     * @param course its name in the scenario
     * @param heatTransferWPerM2K surface heat transfer (convection and radiation), W/(m2 K)
     * @param vapourTransferSPerM surface vapour transfer, kg/(m2 s Pa)
     */
    record Course(String course, double heatTransferWPerM2K, double vapourTransferSPerM) implements Side {}

    /**
     * A face whose own state is given by a course: temperature, and suction by the humidity of its air. What passes is
     * vapour and liquid. For walls of tabulated materials.
     *
     * @param course its name in the scenario
     */
    record Held(String course) implements Side {}

    /**
     * A face held at a temperature and closed to water: soil at depth.
     *
     * @param celsius temperature, C
     */
    record Soil(double celsius) implements Side {}

    /** No heat and no water passes: the middle of a symmetric wall. */
    record Sealed() implements Side {}
}
