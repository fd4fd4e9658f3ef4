/** Questions asked of many simulations: ranges of dates, and what moves them. */
@NullMarked
package org.limedry.study;

import org.jspecify.annotations.NullMarked;
