/** What a material does with water, vapour and heat, as functions of suction (Pa, positive when drier). */
@NullMarked
package org.limedry.material;

import org.jspecify.annotations.NullMarked;
