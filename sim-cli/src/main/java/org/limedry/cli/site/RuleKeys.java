package org.limedry.cli.site;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Either;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Place;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.lime.ReadinessRule;
import org.limedry.lime.ReadinessRules;

/** Keys of the rule for when the next coat may go on. */
final class RuleKeys {
    private static final double PA_PER_KPA = 1000.0;

    private static final Key<String> NAME = Key.needed("name", TextShape.free(), "what the report calls your rule");
    private static final Key<Double> SUCTION = Key.optional(
            "suctionKPa", NumberShape.between(1.0, 100_000.0), "the coat pulls water as hard as this on average");
    private static final Key<Double> AGE =
            Key.optional("ageDays", NumberShape.between(0.1, 365.0), "age reached, in days' worth at 20 C");
    private static final Key<Double> FACE =
            Key.optional("faceRhPercent", NumberShape.between(30.0, 100.0), "its face has fallen below this humidity");
    private static final Key<Double> DAYS =
            Key.optional("days", NumberShape.between(0.1, 365.0), "days on the calendar since it was laid");

    private static final Block OWN = Block.of(NAME, SUCTION, AGE, FACE, DAYS)
            .needingOneOf(List.of(List.of(SUCTION), List.of(AGE), List.of(FACE), List.of(DAYS)));

    static final Shape<Rule> SHAPE = new Either<>(
            new TextShape<>(
                    "green-hard / dry-white / days:N",
                    "^(green-hard|dry-white|days: ?\\d{1,3}(\\.\\d)?)$",
                    RuleKeys::named),
            OWN.as(RuleKeys::own));

    private RuleKeys() {}

    static Rule named(String name) {
        if (name.length() > 12) {
            throw new IllegalArgumentException("must be green-hard, dry-white, days:N, or a rule of your own");
        }
        Rule.Kind kind = switch (name) {
            case "green-hard" -> Rule.Kind.GREEN_HARD;
            case "dry-white" -> Rule.Kind.DRY_WHITE;
            default -> Rule.Kind.STATED;
        };
        return new Rule(ReadinessRules.named(name), kind);
    }

    private static Optional<Rule> own(Entry entry, Place place) {
        boolean sound = entry.given(NAME).isPresent();
        for (Key<Double> key : List.of(SUCTION, AGE, FACE, DAYS)) {
            sound &= !entry.isGiven(key) || entry.given(key).isPresent();
        }
        boolean limited = entry.isGiven(SUCTION) || entry.isGiven(AGE) || entry.isGiven(FACE) || entry.isGiven(DAYS);
        if (!sound || !limited) {
            return Optional.empty();
        }
        ReadinessRule rule = new ReadinessRule(
                entry.get(NAME),
                limit(entry, SUCTION, PA_PER_KPA),
                limit(entry, AGE, 1.0),
                limit(entry, FACE, 0.01),
                limit(entry, DAYS, 1.0));
        return Optional.of(new Rule(rule, Rule.Kind.STATED));
    }

    private static OptionalDouble limit(Entry entry, Key<Double> key, double factor) {
        return entry.given(key).map(value -> OptionalDouble.of(value * factor)).orElse(OptionalDouble.empty());
    }
}
