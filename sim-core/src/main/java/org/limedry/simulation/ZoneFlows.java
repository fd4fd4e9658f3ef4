package org.limedry.simulation;

/** Works out the terms of all rooms from their air and the weather at one instant. */
@FunctionalInterface
interface ZoneFlows {
    /**
     * Writes every term of every room.
     *
     * @param rooms present state of the rooms
     * @param weather outdoor air
     * @param to where the terms go
     */
    void evaluate(RoomUnknowns rooms, Weather weather, ZoneTerms to);
}
