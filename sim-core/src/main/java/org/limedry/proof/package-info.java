/**
 * The proofs of this library, for whoever runs it: tables of moist air, benchmarks of the solver and sayings of the
 * trade, each with what was expected, what is found and how far that may differ.
 */
@NullMarked
package org.limedry.proof;

import org.jspecify.annotations.NullMarked;
