/** What a proof is made of: cases, and figures with what was expected, what was found and how far that may differ. */
@NullMarked
package org.limedry.proof.figure;

import org.jspecify.annotations.NullMarked;
