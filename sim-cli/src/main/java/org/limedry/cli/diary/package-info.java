/** The command {@code diary}: the blank site diary to print, and the check of a filled one. */
@NullMarked
package org.limedry.cli.diary;

import org.jspecify.annotations.NullMarked;
