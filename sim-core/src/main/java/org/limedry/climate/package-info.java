/** Hourly weather, timetables and the linear pieces that a time step needs. */
@NullMarked
package org.limedry.climate;

import org.jspecify.annotations.NullMarked;
