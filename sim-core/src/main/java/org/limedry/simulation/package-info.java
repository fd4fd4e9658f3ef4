/** The time loop: events, adaptive implicit steps, the water account and the outcome. */
@NullMarked
package org.limedry.simulation;

import org.jspecify.annotations.NullMarked;
