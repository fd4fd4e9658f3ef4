/**
 * Wall cases: one wall of tabulated materials between given climates, read, run on two grids and written. Positive is into
 * the wall; depths count from the outside face.
 */
@NullMarked
package org.limedry.cli.wallcase;

import org.jspecify.annotations.NullMarked;
