/** What the readings taken on a job tell of the things nobody measured. */
@NullMarked
package org.limedry.study.fit;

import org.jspecify.annotations.NullMarked;
