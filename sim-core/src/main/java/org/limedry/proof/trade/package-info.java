/** Proofs by the trade: what plasterers and makers say, each saying run as a scenario. Nothing is tuned to them. */
@NullMarked
package org.limedry.proof.trade;

import org.jspecify.annotations.NullMarked;
