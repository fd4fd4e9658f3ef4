package org.limedry.cli.site;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Either;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.Place;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.WordShape;
import org.limedry.reference.Estimate;
import org.limedry.units.Units;
import org.limedry.wall.StartWater;

/**
 * How wet a wall is as the run begins, with the range in which the truth may lie. The figures behind the words are
 * judgement, without a source.
 *
 * @param words as the file says it
 * @param measure what the figure is of
 * @param percent likely, low and high
 */
record Wetness(String words, Measure measure, Estimate percent) {
    /** What a wetness is told in. */
    enum Measure {
        HUMIDITY("% relative humidity in its pores"),
        SATURATION("% of what it holds when soaked");

        private final String unit;

        Measure(String unit) {
            this.unit = unit;
        }

        /** Returns the unit as printed. */
        String unit() {
            return unit;
        }
    }

    private static final String MEASURED = "as measured";

    static final Wetness DAMP = of(org.limedry.wall.Wetness.DAMP);

    static final Shape<Wetness> SHAPE = shape();

    private static Shape<Wetness> shape() {
        Key<Estimate> humidity = Key.optional(
                "rhPercent", Range.between(20.0, 99.0), "relative humidity in its pores, drilled and measured");
        Key<Estimate> saturation =
                Key.optional("saturationPercent", Range.between(1.0, 99.0), "water over what it holds when soaked");
        Block group = Block.of(humidity, saturation).needingOneOf(List.of(List.of(saturation), List.of(humidity)));
        Wetness[] words = Arrays.stream(org.limedry.wall.Wetness.values())
                .map(Wetness::of)
                .toArray(Wetness[]::new);
        return new Either<>(
                WordShape.of(words, Wetness::words),
                group.as((entry, place) -> measured(entry, place, humidity, saturation)));
    }

    private static Optional<Wetness> measured(
            Entry entry, Place place, Key<Estimate> humidity, Key<Estimate> saturation) {
        if (entry.isGiven(humidity) && entry.isGiven(saturation)) {
            place.problem("two figures", "must be one of rhPercent and saturationPercent");
            return Optional.empty();
        }
        return entry.given(humidity)
                .map(percent -> new Wetness(MEASURED, Measure.HUMIDITY, percent))
                .or(() -> entry.given(saturation).map(percent -> new Wetness(MEASURED, Measure.SATURATION, percent)));
    }

    private static Wetness of(org.limedry.wall.Wetness word) {
        return switch (word) {
            case DRY -> of(word, 50.0, 70.0);
            case DAMP -> of(word, 85.0, 95.0);
            case WET -> of(word, 33.0, 67.0);
            case SOAKED -> of(word, 85.0, 99.0);
        };
    }

    private static Wetness of(org.limedry.wall.Wetness word, double low, double high) {
        if (word.start() instanceof StartWater.Saturation water) {
            double percent = Units.percentFromFraction(water.saturation());
            return new Wetness(word.word(), Measure.SATURATION, new Estimate(percent, low, high));
        }
        double percent = Units.percentFromFraction(((StartWater.Humidity) word.start()).relativeHumidity());
        return new Wetness(word.word(), Measure.HUMIDITY, new Estimate(percent, low, high));
    }

    /** Returns the water of a wall that lies at {@code percent} of this wetness's range. */
    StartWater at(double percent) {
        double fraction = Units.fractionFromPercent(percent);
        return measure == Measure.HUMIDITY ? new StartWater.Humidity(fraction) : new StartWater.Saturation(fraction);
    }

    /** Tells whether the user gave a figure, not a word. */
    boolean isMeasured() {
        return words.equals(MEASURED);
    }
}
