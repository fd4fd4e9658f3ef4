/** The command {@code new}: a site file to start from. */
@NullMarked
package org.limedry.cli.starter;

import org.jspecify.annotations.NullMarked;
