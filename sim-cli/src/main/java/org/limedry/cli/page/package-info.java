/** Pages, tables and words that every command shares: what a page is made of, and the files it becomes. */
@NullMarked
package org.limedry.cli.page;

import org.jspecify.annotations.NullMarked;
