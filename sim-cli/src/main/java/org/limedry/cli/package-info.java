/** The command {@code limedry}: where arguments come in and exit codes go out. */
@NullMarked
package org.limedry.cli;

import org.jspecify.annotations.NullMarked;
