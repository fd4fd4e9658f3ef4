package org.limedry.cli.page;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.limedry.room.Plant;
import org.limedry.simulation.Warning;

/** The cautions that a run calls for; each rides with what triggers it. */
public final class Cautions {
    private static final Set<Plant.Fuel> UNFLUED = EnumSet.of(Plant.Fuel.UNFLUED_LPG, Plant.Fuel.UNFLUED_PARAFFIN);

    private static final Caution EYES = new Caution(
            "Lime in the eye",
            "rinse at once with clean water, 20 minutes, get medical help.",
            "lime in eyes: rinse 20 min, get help.");
    private static final Caution QUICKLIME = new Caution(
            "Quicklime boils and spits when wetted",
            "add lime to water, never water to lime.",
            "Quicklime: lime to water.");
    private static final Caution UNFLUED_IN_USE = new Caution(
            "Carbon monoxide from the unflued heater kills",
            "never in a closed room or near sleepers; keep an alarm.",
            "Unflued heater: carbon monoxide kills, never in a closed room.");
    private static final Caution NO_UNFLUED = new Caution(
            "No unflued gas or paraffin heater in a closed room",
            "carbon monoxide kills, and it wets walls.",
            "No unflued heater in a closed room (carbon monoxide, water).");
    private static final Caution FIRE = new Caution(
            "Heaters set fire to old buildings",
            "keep clear of timber, never leave alone, ask the insurer.",
            "Heaters: clear of timber.");
    private static final Caution ELECTRICS = new Caution(
            "Wet walls and electrics kill",
            "protected supply only, checked by a competent person.",
            "Wet electrics: competent person.");
    private static final Caution FROST = new Caution(
            "Frost breaks wet lime", "cover or gently warm the work on nights at risk.", "Frost: cover the work.");
    private static final Caution SOFT = new Caution(
            "Dry is not hard",
            "a shut room starves lime of fresh air; open up daily, test by hand.",
            "Dry is not hard.");
    private static final Caution ROT = new Caution(
            "Wet laths rot", "have a competent person look at the timber before it is covered.", "Wet laths rot.");
    private static final Caution CODES =
            new Caution("Local codes and competent persons come first", "", "Local codes first.");

    private Cautions() {}

    /**
     * Returns the cautions for what was run, in the order in which they are to be read.
     *
     * @param plant everything brought into any room
     * @param warned kinds of warning that were given
     * @param quicklime whether any mix is gauged with quicklime
     */
    public static List<Caution> of(List<Plant> plant, Set<Warning.Kind> warned, boolean quicklime) {
        List<Plant.Heater> heaters = plant.stream()
                .filter(Plant.Heater.class::isInstance)
                .map(Plant.Heater.class::cast)
                .toList();
        boolean unflued =
                warned.contains(Warning.Kind.UNFLUED_HEATER) || heaters.stream().anyMatch(Cautions::isUnflued);
        List<Caution> cautions = new ArrayList<>();
        cautions.add(EYES);
        addIf(quicklime, QUICKLIME, cautions);
        addIf(unflued, UNFLUED_IN_USE, cautions);
        // Advice to bring in heat is given only here too, so the warning stands wherever heat is spoken of.
        addIf(!unflued, NO_UNFLUED, cautions);
        addIf(!heaters.isEmpty(), FIRE, cautions);
        addIf(plant.stream().anyMatch(Cautions::isElectric), ELECTRICS, cautions);
        addIf(
                Stream.of(Warning.Kind.FROST_AIR, Warning.Kind.FROST_WET_FACE).anyMatch(warned::contains),
                FROST,
                cautions);
        addIf(warned.contains(Warning.Kind.DRY_BUT_SOFT), SOFT, cautions);
        addIf(warned.contains(Warning.Kind.WET_LATH), ROT, cautions);
        cautions.add(CODES);
        return List.copyOf(cautions);
    }

    /** Tells whether a heater burns its fuel in the room air. */
    public static boolean isUnflued(Plant.Heater heater) {
        return UNFLUED.contains(heater.fuel());
    }

    private static void addIf(boolean applies, Caution caution, List<Caution> cautions) {
        if (applies) {
            cautions.add(caution);
        }
    }

    private static boolean isElectric(Plant plant) {
        return plant instanceof Plant.Dehumidifier
                || plant instanceof Plant.Fan
                || (plant instanceof Plant.Heater heater && heater.fuel() == Plant.Fuel.ELECTRIC);
    }
}
