package org.limedry.cli.site;

import java.util.Optional;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Brief;
import org.limedry.cli.site.schema.Either;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Place;
import org.limedry.cli.site.schema.Shape;
import org.limedry.reference.Estimate;

/** A figure that the user gives as one number, taken as known, or with its low and high ends. */
final class Range {
    private final NumberShape number;
    private final Key<Double> low;
    private final Key<Double> likely;
    private final Key<Double> high;

    private Range(double least, double most) {
        number = NumberShape.between(least, most);
        low = Key.needed("low", number, "low end: the truth is seldom lower");
        likely = Key.needed("likely", number, "likely value");
        high = Key.needed("high", number, "high end: the truth is seldom higher");
    }

    /** Returns the shape of such a figure between two bounds. */
    static Shape<Estimate> between(double least, double most) {
        return new Range(least, most).shape();
    }

    private Shape<Estimate> shape() {
        return new Either<>(
                number.as((value, place) -> Optional.of(new Estimate(value, value, value))),
                new Brief<>(Block.of(low, likely, high).as(this::ordered), "{low, likely, high}"));
    }

    private Optional<Estimate> ordered(Entry entry, Place place) {
        if (entry.given(low).isEmpty()
                || entry.given(likely).isEmpty()
                || entry.given(high).isEmpty()) {
            return Optional.empty();
        }
        double lowest = entry.get(low);
        double middle = entry.get(likely);
        double highest = entry.get(high);
        if (!(lowest <= middle && middle <= highest)) {
            place.problem(lowest + ", " + middle + ", " + highest, "must rise from low over likely to high");
            return Optional.empty();
        }
        return Optional.of(new Estimate(middle, lowest, highest));
    }
}
