/** The command {@code schema}: the form of the site file and of the wall case file. */
@NullMarked
package org.limedry.cli.schema;

import org.jspecify.annotations.NullMarked;
