/** Files with figures that the user brings: weather, loggers. Every problem is told with its line. */
@NullMarked
package org.limedry.cli.readings;

import org.jspecify.annotations.NullMarked;
