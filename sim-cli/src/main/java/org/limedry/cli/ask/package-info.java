/** What every question has in common: its site file and options, its runs with their progress, its exit code. */
@NullMarked
package org.limedry.cli.ask;

import org.jspecify.annotations.NullMarked;
