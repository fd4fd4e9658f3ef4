/**
 * Moist air: saturation pressure, dew and frost point, wet bulb, humidity ratio, enthalpy, density, barometric pressure,
 * carbon dioxide, and what a cold surface sees of the air before it.
 *
 * <p>Air is an ideal mixture of dry air and water vapour. The real-gas correction is left to the caller as an
 * {@link org.limedry.air.Enhancement}; without it the humidity ratio at saturation is 0.3 to 0.6 % low.
 *
 * <p>No water branch is carried below 0 °C unasked: whoever asks for a saturation pressure names the
 * {@link org.limedry.air.Phase}. Relative humidity below 0 °C is over water, as meteorology reports it, unless the
 * caller says ice.
 */
@NullMarked
package org.limedry.air;

import org.jspecify.annotations.NullMarked;
