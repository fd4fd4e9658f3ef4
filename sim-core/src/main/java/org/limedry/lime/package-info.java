/** Mixes and their water, coats, hydraulic set, carbonation, readiness rules, and the watches for too fast, too cold, frost and mould. */
@NullMarked
package org.limedry.lime;

import org.jspecify.annotations.NullMarked;
