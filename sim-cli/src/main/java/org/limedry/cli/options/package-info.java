/** What could be done to be ready sooner, and what it costs at the firm's own rates: words and pages of {@code options}. */
@NullMarked
package org.limedry.cli.options;

import org.jspecify.annotations.NullMarked;
