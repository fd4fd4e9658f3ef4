/**
 * What a run is told as: one page model, and the console answer, the HTML page and the data files made from it.
 *
 * <p>Every figure shown is read from one outcome; nothing here computes physics. Litres are kilograms of water.
 */
@NullMarked
package org.limedry.cli.report;

import org.jspecify.annotations.NullMarked;
