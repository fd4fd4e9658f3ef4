/** The plan for the doors: its words, its sheet for the wall of the site hut, its figures. */
@NullMarked
package org.limedry.cli.doors;

import org.jspecify.annotations.NullMarked;
