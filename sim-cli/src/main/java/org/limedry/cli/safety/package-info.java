/**
 * Safety: which caution an answer owes its reader, decided in one place from what the site has and what the answer advises.
 * Who owes what, and why: docs/cautions.md.
 */
@NullMarked
package org.limedry.cli.safety;

import org.jspecify.annotations.NullMarked;
