/** Why a coat was ready later than planned. */
@NullMarked
package org.limedry.study.delay;

import org.jspecify.annotations.NullMarked;
