/** The command {@code check}: runs the proofs of the library and puts their figures into lines, a table and pages. */
@NullMarked
package org.limedry.cli.verify;

import org.jspecify.annotations.NullMarked;
