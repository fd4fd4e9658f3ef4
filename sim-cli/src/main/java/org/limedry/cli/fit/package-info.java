/** The model brought to what was read on site: which readings count, what they moved, and the page that tells it. */
@NullMarked
package org.limedry.cli.fit;

import org.jspecify.annotations.NullMarked;
