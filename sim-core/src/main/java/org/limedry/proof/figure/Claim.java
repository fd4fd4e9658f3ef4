package org.limedry.proof.figure;

import org.limedry.units.Check;

/**
 * One number that is to be found.
 *
 * @param quantity what it is, unique within its part of the case; not blank
 * @param unit its unit; "-" for none
 * @param source where the number comes from
 * @param expected the number and what is accepted
 * @param reason why so much is accepted
 * @param standing what is known beforehand
 */
public record Claim(String quantity, String unit, Source source, Expected expected, String reason, Standing standing) {
    public Claim {
        Check.notBlank(quantity, "quantity");
        Check.notBlank(unit, "unit");
        Check.notBlank(reason, "reason");
    }
}
