/** What a job asks of its gangs, its weather and the rooms next to one another. */
@NullMarked
package org.limedry.study.job;

import org.jspecify.annotations.NullMarked;
