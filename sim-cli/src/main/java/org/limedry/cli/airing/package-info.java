/** How much air a room needs: the answer in words, its page, its figures. */
@NullMarked
package org.limedry.cli.airing;

import org.jspecify.annotations.NullMarked;
