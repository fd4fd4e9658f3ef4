/** Published tables and default materials, each with its source, and the reader that gives them types. */
@NullMarked
package org.limedry.reference;

import org.jspecify.annotations.NullMarked;
