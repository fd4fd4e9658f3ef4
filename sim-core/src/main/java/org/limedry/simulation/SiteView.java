package org.limedry.simulation;

import java.util.List;
import org.limedry.wall.WallView;

/** What may be read of a site in the course of a run. It moves on with the run: keep figures, not the view. */
public sealed interface SiteView permits SiteModel {
    /** Returns the walls in the order of the scenario. */
    List<WallView> walls();

    /** Returns the air temperature of a room of the scenario, C. */
    double airCelsius(int room);

    /** Returns the temperature of the radiant node of a room, C. */
    double radiantCelsius(int room);

    /** Returns the vapour in the air of a room, kg/m3. */
    double vapourKgPerM3(int room);

    /** Returns the vapour pressure in a room, Pa. */
    double vapourPa(int room);

    /** Returns the water that air carried out of a room over the accepted step, net, kg. */
    double stepOutByAirKg(int room);
}
