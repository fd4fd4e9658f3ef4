/** How likely a job is to be ready by a date, and what moves the odds. */
@NullMarked
package org.limedry.study.odds;

import org.jspecify.annotations.NullMarked;
