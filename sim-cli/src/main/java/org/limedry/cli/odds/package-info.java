/** How sure the dates are and which unknown makes them so unsure: the words and pages of {@code odds}. */
@NullMarked
package org.limedry.cli.odds;

import org.jspecify.annotations.NullMarked;
