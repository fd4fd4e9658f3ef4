/**
 * Charts in ink: small immutable models in, SVG and PNG out. Nothing here computes physics.
 *
 * <p>Places are in px from the top left corner, y downwards; 680 px print at 180 mm.
 */
@NullMarked
package org.limedry.cli.chart;

import org.jspecify.annotations.NullMarked;
