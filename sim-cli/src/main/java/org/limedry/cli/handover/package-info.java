/** What is handed over with a finished job: the aftercare sheet for the owner, the record of care for the officer. */
@NullMarked
package org.limedry.cli.handover;

import org.jspecify.annotations.NullMarked;
