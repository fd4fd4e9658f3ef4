/** The site file: its keys, its reading with every problem collected, and the scenarios that follow from it. */
@NullMarked
package org.limedry.cli.site;

import org.jspecify.annotations.NullMarked;
