/** A job run to its end: its coats, weeks, bars, rows and cautions, for all questions that set jobs side by side. */
@NullMarked
package org.limedry.cli.job;

import org.jspecify.annotations.NullMarked;
