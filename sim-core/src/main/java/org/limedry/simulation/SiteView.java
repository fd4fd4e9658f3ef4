package org.limedry.simulation;

import java.util.List;
import org.limedry.wall.WallView;

/** The present state of a site, read only. Walls and rooms count in the order of the scenario, from 0. */
public interface SiteView {
    /** Returns the walls. */
    List<? extends WallView> walls();

    /** Returns the air temperature of a room, C. */
    double airCelsius(int room);

    /** Returns the temperature of the radiant node of a room, C. */
    double radiantCelsius(int room);

    /** Returns the vapour density of the air of a room, kg/m3. */
    double vapourKgPerM3(int room);

    /** Returns the vapour that left a room with its air over the accepted step, kg; negative when it came in. */
    double stepOutByAirKg(int room);
}
