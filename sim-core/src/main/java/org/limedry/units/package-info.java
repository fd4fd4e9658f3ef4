/**
 * Conversions of units and the checks of arguments: the floor that everything else stands on.
 *
 * <p>Inside the library lengths are in metres, times in seconds, pressures in pascals, temperatures in degrees Celsius
 * (kelvin where a formula asks for it) and relative humidity is a fraction. Millimetres, percent and hours occur only
 * where a file is read or written, and are converted by {@link org.limedry.units.Units}.
 */
@NullMarked
package org.limedry.units;

import org.jspecify.annotations.NullMarked;
