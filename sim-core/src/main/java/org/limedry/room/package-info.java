/** Zone balance of heat and vapour: openings, leakage, plant and ground. Positive flows add to the room air. */
@NullMarked
package org.limedry.room;

import org.jspecify.annotations.NullMarked;
