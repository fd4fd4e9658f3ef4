/** The command {@code readings}: what a logger wrote, as understood, joined, tidied and drawn. */
@NullMarked
package org.limedry.cli.loggers;

import org.jspecify.annotations.NullMarked;
