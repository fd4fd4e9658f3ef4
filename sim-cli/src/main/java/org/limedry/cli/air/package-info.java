/** The command {@code air}: moist air worked out for one state or for a table. */
@NullMarked
package org.limedry.cli.air;

import org.jspecify.annotations.NullMarked;
