package org.limedry.cli.site;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.limedry.cli.site.schema.Entry;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.HandTest;
import org.limedry.lime.Laying;
import org.limedry.lime.Mix;
import org.limedry.lime.MortarChoice;
import org.limedry.study.Draw;
import org.limedry.units.Units;

/** From the keys of coats to coats that can be computed, for one draw. */
final class CoatPlans {
    private final SiteParts parts;
    private final Guesses guesses;
    private final Draw draw;

    CoatPlans(SiteParts parts, Guesses guesses, Draw draw) {
        this.parts = parts;
        this.guesses = guesses;
        this.draw = draw;
    }

    /** Returns the coats in the order of the file, numbered on each wall from 1. */
    List<CoatPlan> coats() {
        Map<String, Integer> count = new HashMap<>();
        List<CoatPlan> plans = new ArrayList<>();
        for (Entry coat : parts.coats()) {
            String wall = parts.wallOf(coat).planName();
            plans.add(coat(coat, wall, count.merge(wall, 1, Integer::sum)));
        }
        return plans;
    }

    private CoatPlan coat(Entry coat, String wall, int number) {
        double thicknessMm = coat.get(CoatKeys.THICKNESS_MM) + coat.get(CoatKeys.DUBBING_MM);
        return new CoatPlan(
                wall,
                number,
                mortar(coat),
                Units.metresFromMm(thicknessMm * guesses.coatThickness().in(draw)),
                coat.get(CoatKeys.MORTAR_CELSIUS),
                coat.get(CoatKeys.PREWETTING),
                laying(coat.get(CoatKeys.LAID)));
    }

    private CoatMortar mortar(Entry coat) {
        Entry entry = parts.mixOf(coat);
        Mix mix = Mixes.of(coat.get(CoatKeys.MIX), entry);
        MortarChoice choice = new MortarChoice(
                OptionalDouble.of(guesses.freeWater(mix, entry).in(draw)),
                OptionalDouble.of(
                        Guesses.pascals(guesses.coatEntrySuction(mix, entry).in(draw))),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return parts.library().mortars().mortar(mix, choice);
    }

    private Laying laying(Optional<LocalDate> laid) {
        if (laid.isPresent()) {
            return new Laying.On(parts.days().workBegins(laid.get()));
        }
        return whenReady();
    }

    private Laying.WhenReady whenReady() {
        return new Laying.WhenReady(
                parts.days().zone(),
                parts.entry().get(SiteKeys.WORKING_DAYS),
                RunDays.START_OF_WORK,
                parts.entry().get(SiteKeys.COLD_LINE));
    }

    /**
     * Returns the coats as gangs lay them: a date in the file is the day before which no gang begins; what is under a coat
     * must be ready, whatever the file says.
     */
    List<CoatPlan> coatsByGang(List<GangPlan> gangs) {
        List<CoatPlan> plans = coats();
        List<CoatPlan> byGang = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Entry coat = parts.coats().get(i);
            double areaM2 = parts.faces().named(plans.get(i).wall()).areaM2();
            List<Laying.Gang> hands = gangs.stream()
                    .map(gang -> new Laying.Gang(
                            gang.name(),
                            areaM2 / coat.given(CoatKeys.M2_PER_DAY).orElse(gang.m2PerDay())))
                    .toList();
            Instant earliest = coat.get(CoatKeys.LAID)
                    .map(parts.days()::workBegins)
                    .orElse(parts.days().from());
            byGang.add(plans.get(i).with(new Laying.ByGang(whenReady(), earliest, hands)));
        }
        return byGang;
    }

    /** Returns the hand tests of the file and of the diary, each at the start of its day. */
    List<HandTest> handTests() {
        Stream<HandTest> file = parts.entry().get(SiteKeys.HAND_TESTS).stream()
                .map(test -> new HandTest(
                        parts.wallOf(test).planName(),
                        test.get(CoatKeys.COAT),
                        parts.days().workBegins(test.get(CoatKeys.DATE)),
                        test.get(CoatKeys.RESULT)));
        Stream<HandTest> diary = parts.readings().stream().flatMap(read -> read.handTests(parts.days()).stream());
        return Stream.concat(file, diary).distinct().toList();
    }
}
