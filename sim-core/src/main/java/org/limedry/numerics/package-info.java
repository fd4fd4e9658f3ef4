/** Block-tridiagonal and bordered solves, tables and integrals: no physics. */
@NullMarked
package org.limedry.numerics;

import org.jspecify.annotations.NullMarked;
