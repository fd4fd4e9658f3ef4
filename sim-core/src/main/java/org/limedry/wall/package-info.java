/** Layers, grid and coupled heat, vapour and liquid transport through one wall. Positive fluxes run from the outside face to the inside face; face fluxes are positive into the wall. */
@NullMarked
package org.limedry.wall;

import org.jspecify.annotations.NullMarked;
