/** What is wrong with the input, told in the words of the person who wrote it. */
@NullMarked
package org.limedry.cli.problem;

import org.jspecify.annotations.NullMarked;
