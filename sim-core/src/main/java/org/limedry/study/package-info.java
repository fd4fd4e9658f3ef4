/**
 * What every question put to many simulations needs: the unknowns, the draws of them, the runs and the range of dates. Each
 * question has a package of its own below this one and uses no other question.
 */
@NullMarked
package org.limedry.study;

import org.jspecify.annotations.NullMarked;
