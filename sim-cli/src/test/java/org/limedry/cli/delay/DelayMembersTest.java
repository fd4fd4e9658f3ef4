package org.limedry.cli.delay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReader;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;

/** EXACT: the members that the class promises, of invented sites. */
final class DelayMembersTest {
    @TempDir
    Path temp;

    /** Returns a site of so many rooms, each with an unknown of its own, the last one with a wall that is plastered. */
    private Site site(int rooms, String more) throws IOException {
        String places = IntStream.rangeClosed(1, rooms)
                .mapToObj(i ->
                        "  room" + i + ":\n    size: {lengthM: 4.0, widthM: 3.0, heightM: 2.4}\n    floor: boards\n")
                .collect(Collectors.joining());
        String text =
                "site: Long house (invented)\nplace: {weather: valentia-2017}\nuntil: 2026-12-31\nrooms:\n" + places
                        + "    walls: {north: {areaM2: 6.0, background: old brick, thicknessMm: 220, wetness: damp}}\n"
                        + "mixes: {base: {lime: putty, limeParts: 1, sandParts: 3}}\n"
                        + "coats: [{wall: north, mix: base, thicknessMm: 11, laid: 2026-11-03}]\n" + more;
        return assertInstanceOf(
                        SiteReader.Good.class, SiteReader.read(Files.writeString(temp.resolve("long.yaml"), text)))
                .site();
    }

    private static List<Double> suctions(List<Draw> draws) {
        return draws.stream()
                .map(draw -> draw.quantile(DelayMembers.READY_SUCTION))
                .sorted()
                .toList();
    }

    // EXACT: both ends, and the middles of six slices.
    @Test
    void members_holdBothEndsOfTheRulesSuctionAndSpreadTheOthers() throws IOException {
        List<Draw> draws = DelayMembers.of(site(1, ""), 8).draws();

        assertEquals(8, draws.size());
        assertEquals(Map.of(DelayMembers.READY_SUCTION, 0.0), draws.get(0).quantiles());
        assertEquals(Map.of(DelayMembers.READY_SUCTION, 1.0), draws.get(1).quantiles());
        assertEquals(IntStream.range(0, 6).mapToObj(i -> (i + 0.5) / 6).toList(), suctions(draws.subList(2, 8)));
    }

    @Test
    void members_ofASiteWithMoreUnknownsThanAreVaried_holdTheRuleAllTheSame() throws IOException {
        Site site = site(9, "");
        List<String> varied = site.uncertain().stream().map(Uncertain::key).toList();

        List<Draw> draws = DelayMembers.of(site, 8).draws();

        assertFalse(varied.contains(DelayMembers.READY_SUCTION), varied::toString);
        assertEquals(6, suctions(draws.subList(2, 8)).stream().distinct().count());
        assertTrue(draws.get(2).quantiles().keySet().containsAll(varied), draws::toString);
    }

    @Test
    void members_ofARuleInDays_areAllSpread() throws IOException {
        List<Draw> draws =
                DelayMembers.of(site(1, "readyRule: \"days: 5\"\n"), 8).draws();

        assertEquals(8, draws.size());
        draws.forEach(draw -> assertFalse(draw.quantiles().containsKey(DelayMembers.READY_SUCTION), draw::toString));
        assertEquals(
                8,
                draws.stream()
                        .map(draw -> draw.quantile(DelayMembers.WETNESS))
                        .distinct()
                        .count());
    }
}
