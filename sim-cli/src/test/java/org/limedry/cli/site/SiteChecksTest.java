package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One change to a good file, one problem. */
final class SiteChecksTest {
    // PINNED: our own words.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "to: loft|to: cellar|rooms.store.openings[2].to: no room \"cellar\"; there are: store, loft",
                "to: loft|to: store|rooms.store.openings[2].to: the same room; must be another room",
                "name: window|name: yard door|rooms.store.openings[1].name: \"yard door\" given twice; choose another name for one of them",
                "{room: loft}|{room: attic}|rooms.store.walls.spine.otherSide.room: no room \"attic\"; there are: store, loft",
                "{room: loft}|{}|rooms.store.walls.spine.otherSide: not enough; needs room, or celsius and rhPercent",
                "background: timber lath, otherSide|background: timber lath, thicknessMm: 30, otherSide|rooms.store.walls.lath.thicknessMm: given for timber lath; must be left out: laths are taken as 8 mm",
                "{lengthM: 4.6, heightM: 2.4,|{areaM2: 11,|rooms.store.walls.north.risingDampLitresPerDayPerM: 1.1; needs lengthM of the wall",
                "finish: limewash|finish: tiles|coats[0].wall: the wall has tiles; no coat holds on tiles: hack them off and leave finish out",
                "volumeM3: 40|volumeM3: 4000|rooms.loft.volumeM3: 4000.0; must be 1 to 30 times floorAreaM2, 16.0",
                "wall: north, litresPerM2|wall: south, litresPerM2|rooms.store.plant[8].wall: no wall \"south\"; in this room there are: north, spine, lath, paint",
                "from: 2026-11-10, until|from: 2026-11-13, until|rooms.store.plant[8].until: 2026-11-12; must not be before from, 2026-11-13",
                "slagPercentOfMix: 5|slagPercentOfMix: 5, pozzolanPercentOfMix: 5|mixes.base.pozzolanPercentOfMix: given beside slag; must be one of the two",
                "waterLitresPerBatch: 12, |`` |mixes.measured.limeLitresPerBatch: given alone; needs waterLitresPerBatch",
                "waterLitresPerBatch: 12|waterLitresPerBatch: 1200|mixes.measured.waterLitresPerBatch: makes 947 litres of free water in a m3 of mortar; must be parts and water that make 50 to 900",
                "{wall: north, mix: measured|{wall: north, room: loft, mix: measured|coats[1].wall: no wall \"north\"; there are: north, spine, lath, paint, ceiling, gable",
                "room: store, mix: base|room: shed, mix: base|coats[0].room: no walls in a room \"shed\"; there are: store, loft",
                "laid: 2026-11-11|laid: 2027-01-11|coats[2].laid: 2027-01-11; must be in the run, 2026-11-02 to 2026-12-29",
                "coat: 1, date|coat: 3, date|handTests[0].coat: 3; there are 2 coats on that wall",
                "until: 2026-12-29|until: 2036-12-29|until: 2036-12-29; must be within 1100 days of the first day, 2026-11-02",
                "low: 400, likely: 450|low: 460, likely: 450|mixes.finish.freeWaterLitresPerM3: 460.0, 450.0, 500.0; must rise from low over likely to high",
                "waterAt80KgPerM3: 7|waterAt80KgPerM3: 295|own.old brick.waterAt80KgPerM3: 295.0 at 80 %, 290.0 soaked; must hold more when soaked",
                "own:|own:\\n  old brik: {}|own.old brik: not known; nearest: old brick",
                "workingDays: Mon-Sat|workingDays: \"Mon-Sat 08:00-12:00\"|workingDays: \"Mon-Sat 08:00-12:00\"; must be days without times",
                "workingDays: Mon-Sat|workingDays: never|workingDays: \"never\"; must be at least one day",
                "\"2026-11-14 10:00-12:00\"|\"2026-11-31 10:00-12:00\"|rooms.store.openings[0].open[1]: \"2026-11-31 10:00-12:00\"; must be a date, YYYY-MM-DD: there is no such day",
                "2026-11-20 to 2026-11-22|2026-11-22 to 2026-11-20|rooms.store.openings[2].open: \"2026-11-22 to 2026-11-20\"; must not end before it begins",
                "kind: fan|kind: fun|rooms.store.plant[6].kind: \"fun\"; must be one of: electric heater, flued heater, unflued LPG heater, unflued paraffin heater, dehumidifier, fan, people, misting (fan meant?)",
                "kind: fan, |`` |rooms.store.plant[6].kind: missing; must be one of: electric heater, flued heater, unflued LPG heater, unflued paraffin heater, dehumidifier, fan, people, misting",
                "kind: fan,|kind: fan, kind: fan,|rooms.store.plant[6].kind: given twice; first on line 34",
                "hair: true|hair: yes|mixes.base.hair: \"yes\"; must be true or false",
                "site: Everything|site: 1889|site: 1889; must be text; if it is meant as text, put it in quotes",
                "site: Everything|site: |site: nothing; must be text",
                "site: Everything|site: &a x|site: &a x",
                "count: 2|count: 2.5|rooms.store.plant[7].count: 2.5; must be a whole number",
                "areaM2: 6.0|areaM2: 6,0|rooms.store.walls.lath.0: not known; there are: areaM2, lengthM, heightM, background, thicknessMm, wetness, otherSide, finish, risingDampLitresPerDayPerM, face",
                "gable:|spine pane:|rooms.loft.walls.spine pane: the name \"spine pane\"; is taken by another face; choose another",
                "days: 4}|dayz: 4}|readyRule.dayz: not known; nearest: days",
                "days: 4}|days: none}|readyRule.days: \"none\"; must be a plain number",
            })
    void read_oneChange_tellsOneProblem(String what, String by, String problem) {
        String text = FullFile.TEXT.replace(what, by.replace("\\n", "\n"));
        assertTrue(FullFile.TEXT.contains(what), what);

        String problems = Examples.problems(text);

        if (problem.endsWith("&a x")) {
            assertEquals("", problems); // an anchor that nothing points to does no harm
            return;
        }
        assertTrue(problems.contains(problem), problems);
    }
}
