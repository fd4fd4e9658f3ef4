/** A job as a programme: bars for work and for waiting, who lays what when, and what one room does to the next. */
@NullMarked
package org.limedry.cli.programme;

import org.jspecify.annotations.NullMarked;
