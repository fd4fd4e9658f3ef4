/** Proofs of the air: every table of moist air that is shipped, by every formula it speaks about. */
@NullMarked
package org.limedry.proof.tables;

import org.jspecify.annotations.NullMarked;
