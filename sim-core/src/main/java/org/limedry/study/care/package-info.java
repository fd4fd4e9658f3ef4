/** Whether the rooms were kept as fresh plaster needs it. */
@NullMarked
package org.limedry.study.care;

import org.jspecify.annotations.NullMarked;
