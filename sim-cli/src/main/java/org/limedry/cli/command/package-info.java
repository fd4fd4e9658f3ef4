/** One class for each command of {@code limedry}, and the list of them. */
@NullMarked
package org.limedry.cli.command;

import org.jspecify.annotations.NullMarked;
