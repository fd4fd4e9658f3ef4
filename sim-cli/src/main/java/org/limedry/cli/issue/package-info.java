/** What moved since the page was given out before, in the same words wherever it is told. */
@NullMarked
package org.limedry.cli.issue;

import org.jspecify.annotations.NullMarked;
