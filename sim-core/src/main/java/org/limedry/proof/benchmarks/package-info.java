/** Proofs of the solver: sheets with a known answer, run by the same time loop as sites. */
@NullMarked
package org.limedry.proof.benchmarks;

import org.jspecify.annotations.NullMarked;
