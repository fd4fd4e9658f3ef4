/** Which measure saves how many days. */
@NullMarked
package org.limedry.study.options;

import org.jspecify.annotations.NullMarked;
