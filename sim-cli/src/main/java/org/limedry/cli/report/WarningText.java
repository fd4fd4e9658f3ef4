package org.limedry.cli.report;

import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.simulation.Warning;

/** What a warning says. */
final class WarningText {
    private WarningText() {}

    /**
     * Returns the warning as a sentence without its dates.
     *
     * @param subject what its subject is called
     */
    static String of(Warning warning, String subject) {
        String what = Names.capital(subject);
        String whole = Figures.whole(warning.value());
        String litres = Figures.litres(warning.value());
        String celsius = Figures.oneDecimal(warning.value()) + " \u00b0C";
        return switch (warning.kind()) {
            case FROST_AIR -> "%s: frost, the air fell to %s over a young coat.".formatted(what, celsius);
            case FROST_WET_FACE -> "%s: the wet face froze at %s though the air did not.".formatted(what, celsius);
            case TOO_COLD ->
                "%s: below the cold line for %s while a coat was firming."
                        .formatted(what, Figures.count(warning.value(), "hour"));
            case TOO_FAST ->
                "%s: too fast, up to %s litres a m\u00b2 an hour left in the first days."
                        .formatted(what, Figures.plain(warning.value()));
            case GLASS_RUNNING -> "%s: water ran for %s.".formatted(what, Figures.count(warning.value(), "hour"));
            case UNFLUED_HEATER ->
                "%s: carbon monoxide danger, and %s litres of water burnt into the room air.".formatted(what, litres);
            case HEAT_WITHOUT_AIR -> "%s: heat without air, %s litres condensed while heated.".formatted(what, litres);
            case DRY_BUT_SOFT ->
                "%s: dry but soft, carbon dioxide fell to %s ppm in the shut room.".formatted(what, whole);
            case CARBON_DIOXIDE ->
                "%s: carbon dioxide up to %s ppm, above the 5,000 ppm working limit.".formatted(what, whole);
            case WET_LATH ->
                "%s: laths at up to %s %% of their mass in water; above 20 %% timber rots.".formatted(what, whole);
            case MOULD ->
                "%s: mould, index up to %s of 6 on bare timber or old paint (1 begun, 3 seen by eye)."
                        .formatted(what, Figures.oneDecimal(warning.value()));
            case NOT_LAID -> "%s: coat %s could not be laid before the run ended.".formatted(what, whole);
            case NOT_READY -> "%s: coat %s was not ready when the run ended.".formatted(what, whole);
            case WALL_FULL -> "%s: full of water, %s litres of rising damp held back.".formatted(what, litres);
        };
    }
}
