/** Proofs by the trade: what plasterers and makers say, each saying run as a scenario. The ready rule was fitted to T3 to T8. */
@NullMarked
package org.limedry.proof.trade;

import org.jspecify.annotations.NullMarked;
