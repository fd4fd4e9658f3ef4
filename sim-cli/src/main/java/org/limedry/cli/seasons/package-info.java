/** The same job begun on different days: how long each takes and what it brings. */
@NullMarked
package org.limedry.cli.seasons;

import org.jspecify.annotations.NullMarked;
