/** When to open the doors of a room, hour by hour. */
@NullMarked
package org.limedry.study.doors;

import org.jspecify.annotations.NullMarked;
