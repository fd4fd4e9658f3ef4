/** Which way of airing and heating a room gets its coats ready soonest, and soundly. */
@NullMarked
package org.limedry.study.airing;

import org.jspecify.annotations.NullMarked;
