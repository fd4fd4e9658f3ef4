/** The diary of a site: one line a day, written in five minutes, checked when it is read. */
@NullMarked
package org.limedry.cli.readings.diary;

import org.jspecify.annotations.NullMarked;
