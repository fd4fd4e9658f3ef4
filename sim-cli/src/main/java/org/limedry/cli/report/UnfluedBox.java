package org.limedry.cli.report;

import java.util.List;
import java.util.stream.IntStream;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.simulation.History;
import org.limedry.simulation.Warning;

/**
 * What an unflued heater puts into the air of a room, all in one place.
 *
 * @param room the room, with a capital
 * @param litres water burnt into its air
 * @param ppm highest carbon dioxide of any hour
 */
record UnfluedBox(String room, String litres, String ppm) {
    /** Returns one box for each room with such a heater. */
    static List<UnfluedBox> of(Findings findings) {
        return findings.warnings().stream()
                .map(WarningGroup::warning)
                .filter(warning -> warning.kind() == Warning.Kind.UNFLUED_HEATER)
                .map(warning -> new UnfluedBox(
                        Names.capital(findings.words(warning.subject())),
                        Figures.litres(warning.value()),
                        Figures.whole(highestPpm(findings.outcome().history(), warning.subject()))))
                .toList();
    }

    /** Tells whether a box says what a warning says. */
    static boolean holds(Warning warning, List<WarningGroup> all) {
        return switch (warning.kind()) {
            case UNFLUED_HEATER -> true;
            case CARBON_DIOXIDE ->
                all.stream()
                        .map(WarningGroup::warning)
                        .anyMatch(other -> other.kind() == Warning.Kind.UNFLUED_HEATER
                                && other.subject().equals(warning.subject()));
            default -> false;
        };
    }

    private static double highestPpm(History history, String room) {
        return history.rooms().stream()
                .filter(hours -> hours.room().equals(room))
                .map(History.RoomHours::carbonDioxidePpm)
                .flatMapToDouble(ppm -> IntStream.range(0, ppm.size()).mapToDouble(ppm::at))
                .max()
                .orElse(0.0);
    }
}
