/** Planned against actual: the days lost by cause, in an answer, tables, and on one A4 page for the client. */
@NullMarked
package org.limedry.cli.delay;

import org.jspecify.annotations.NullMarked;
