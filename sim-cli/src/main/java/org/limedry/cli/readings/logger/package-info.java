/**
 * Files that loggers wrote. What a column means is named by the user or proposed openly; what is wrong in a file is listed
 * with its lines and never mended in silence; one bad line does not lose the others.
 */
@NullMarked
package org.limedry.cli.readings.logger;

import org.jspecify.annotations.NullMarked;
