/**
 * The form of a site file, declared once: from the same declarations come the checks, the JSON Schema and the table of
 * keys in the user guide. Knows YAML and problems, nothing of plaster.
 */
@NullMarked
package org.limedry.cli.site.schema;

import org.jspecify.annotations.NullMarked;
