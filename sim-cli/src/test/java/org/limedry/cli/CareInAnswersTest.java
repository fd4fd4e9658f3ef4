package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.cli.safety.Caution;

/**
 * Every answer about a site carries the cautions that the site is due, on the console, on its page and in its data file; a
 * site that is not due them shows none of them. Both sites are invented. EXACT: the texts are those of the cautions.
 */
final class CareInAnswersTest {
    private static final String DANGEROUS = site("""
                - {name: yard door, widthM: 0.95, heightM: 2.0, open: always}
            """, "quicklime", "finish: old paint, ", "4.0", """
                plant:
                  - {kind: unflued LPG heater, kW: 1, on: "daily 09:00-15:00"}
                  - {kind: unflued paraffin heater, kW: 1, on: "daily 09:00-15:00"}
                  - {kind: flued heater, kW: 1, on: "daily 09:00-15:00"}
                  - {kind: electric heater, kW: 1, thermostatCelsius: 14, on: always}
                  - {kind: fan, m3PerHour: 100, on: always}
                  - {kind: dehumidifier, type: desiccant, litresPerDayRated: 10, on: always}
                  - {kind: misting, wall: north, litresPerM2: 0.2, at: "12:00"}
            """);

    private static final String CALM = site("""
                - {name: yard door, widthM: 0.95, heightM: 2.0, open: "daily 09:00-16:00"}
            """, "putty", "", "2.2", "");

    /** Due to the first site whatever is asked of it. */
    private static final Set<Caution> OF_THE_SITE = EnumSet.of(
            Caution.UNFLUED,
            Caution.GAS_BOTTLE,
            Caution.PARAFFIN,
            Caution.FLUE,
            Caution.SPILLAGE,
            Caution.FIRE,
            Caution.LEFT_ON,
            Caution.ELECTRICS,
            Caution.SPRAY,
            Caution.LIME,
            Caution.QUICKLIME,
            Caution.DUST,
            Caution.HEIGHT,
            Caution.OPEN_DOORS,
            Caution.BATS,
            Caution.CODES);

    /** Not due to the second, whatever is asked of it; some answers to it do have machines run by night. */
    private static final Set<Caution> NOT_OF_THE_CALM_SITE = EnumSet.of(
            Caution.BAD_AIR,
            Caution.UNFLUED,
            Caution.GAS_BOTTLE,
            Caution.PARAFFIN,
            Caution.FLUE,
            Caution.SPILLAGE,
            Caution.QUICKLIME,
            Caution.HEIGHT,
            Caution.ROT,
            Caution.MOULD);

    private static String site(String door, String lime, String finish, String heightM, String plant) {
        return """
                site: Care room (invented)
                place: {weather: mullingar-2017, shelter: sheltered}
                from: 2026-06-01
                until: 2026-06-21
                rooms:
                  store:
                    released: 2026-06-01
                    size: {lengthM: 5.0, widthM: 4.0, heightM: %s}
                    openings:
                %s    walls:
                      north: {areaM2: 8.0, background: old brick, thicknessMm: 220, %swetness: damp}
                %smixes:
                  base: {lime: %s, limeParts: 1, sandParts: 3, sand: damp}
                coats:
                  - {wall: north, mix: base, thicknessMm: 8, laid: 2026-06-02}
                planned:
                  rooms:
                    store:
                      released: 2026-05-25
                """.formatted(heightM, door.indent(2), finish, plant.isEmpty() ? "" : plant, lime);
    }

    /** A command, the cautions that it adds by what it advises, its page and its data file. */
    private static Stream<Arguments> questions() {
        return Stream.of(
                Arguments.of("run --quick", EnumSet.of(Caution.LIME), "report.html", "summary.json"),
                Arguments.of("airing --levels 0,8", EnumSet.of(Caution.VENTS), "airing.html", "airing.json"),
                Arguments.of("options", EnumSet.of(Caution.VENTS, Caution.SOFT), "options.html", "options.json"),
                Arguments.of("seasons --start 2026-06-01", EnumSet.of(Caution.LIME), "seasons.html", "seasons.json"),
                Arguments.of("programme", EnumSet.of(Caution.LIME), "programme.html", "programme.json"),
                Arguments.of("odds --runs 32", EnumSet.of(Caution.LIME), "odds.html", "odds.json"),
                Arguments.of("handover", EnumSet.of(Caution.CONSENT), "aftercare.html", "handover.json"));
    }

    private static Cli ask(String command, Path site, Path out) {
        List<Object> args = new ArrayList<>(List.of((Object[]) command.split(" ")));
        args.add(1, site);
        args.addAll(List.of("--out", out));
        return Cli.run(args.toArray());
    }

    private static Path write(Path folder, String site) throws IOException {
        return Files.writeString(folder.resolve("site.yaml"), site);
    }

    /** Lines are wrapped: one blank between words. */
    private static String unwrapped(String console) {
        return console.replaceAll("\\s+", " ");
    }

    private static String plain(String html) {
        return html.replaceAll("<[^>]*>", "");
    }

    @ParameterizedTest
    @MethodSource("questions")
    void dangerousSite_isToldEverywhere(
            String command, Set<Caution> advised, String page, String data, @TempDir Path folder) throws IOException {
        Cli cli = ask(command, write(folder, DANGEROUS), folder);

        assertTrue(cli.code() <= 1, cli.err());
        String console = unwrapped(cli.out());
        String html = plain(Files.readString(folder.resolve(page)));
        String json = Files.readString(folder.resolve(data));
        EnumSet<Caution> due = EnumSet.copyOf(OF_THE_SITE);
        due.addAll(advised);
        for (Caution caution : due) {
            assertTrue(console.contains(caution.brief()), caution + " on the console: " + console);
            assertTrue(html.contains(caution.danger()), caution + " on " + page);
            assertTrue(json.contains(caution.text()), caution + " in " + data);
        }
        assertTrue(console.contains("DANGER: fuel burns in the air of a room"), console);
        assertTrue(html.contains("DANGER: fuel burns in the air of a room"), page);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void calmSite_isToldNothingThatItIsNotDue(
            String command, Set<Caution> advised, String page, String data, @TempDir Path folder) throws IOException {
        Cli cli = ask(command, write(folder, CALM), folder);

        assertTrue(cli.code() <= 1, cli.err());
        String console = unwrapped(cli.out());
        String json = Files.readString(folder.resolve(data));
        for (Caution caution : NOT_OF_THE_CALM_SITE) {
            assertFalse(console.contains(caution.brief()), caution + " on the console: " + console);
            assertFalse(json.contains(caution.text()), caution + " in " + data);
        }
        assertFalse(console.contains("DANGER"), console);
        assertFalse(plain(Files.readString(folder.resolve(page))).contains("DANGER"), page);
        assertTrue(console.contains(Caution.CODES.brief()), console);
    }

    @Test
    void doorsSheet_ofADangerousSite_carriesThemInBrief(@TempDir Path folder) throws IOException {
        Cli cli = ask("doors", write(folder, DANGEROUS), folder);

        assertEquals(0, cli.code(), cli.err());
        String sheet = plain(Files.readString(folder.resolve("doors.html")));
        for (Caution caution : OF_THE_SITE) {
            assertTrue(unwrapped(cli.out()).contains(caution.brief()), caution + " on the console");
            assertTrue(sheet.contains(caution.brief()), caution + " on the sheet");
        }
        assertFalse(cli.out().contains("always shut"), "shut doors are no way where fuel burns");
        assertTrue(sheet.contains("DANGER: fuel burns in the air of a room"), sheet);
    }

    @Test
    void letter_ofADangerousSite_namesTheDangerAndLocalCodes(@TempDir Path folder) throws IOException {
        Cli cli = ask("delay", write(folder, DANGEROUS), folder);

        assertTrue(cli.code() <= 1, cli.err());
        assertTrue(unwrapped(cli.out()).contains(Caution.UNFLUED.brief()), cli.out());
        String letter = plain(Files.readString(folder.resolve("delay.html")));
        assertTrue(letter.contains("DANGER: fuel burns in the air of a room"), letter);
        assertTrue(letter.contains("Local codes and competent persons first"), letter);
        assertTrue(Files.readString(folder.resolve("delay.json")).contains(Caution.UNFLUED.text()));
    }

    @Test
    void everyOtherAnswer_endsWithLocalCodes(@TempDir Path folder) throws IOException {
        Path fresh = folder.resolve("new.yaml");
        List<Cli> answers = List.of(
                Cli.run("air", "--celsius", "12", "--rh", "80"),
                Cli.run("new", fresh),
                Cli.run("readings", "../docs/examples/readings/store.csv"),
                Cli.run("diary", "--check", "../docs/examples/diary/net-loft-diary.csv"),
                Cli.run("wall", "../docs/examples/wall/heat-step.yaml", "--out", folder.resolve("wall")),
                Cli.run("check", "iapws_checkpoints"));

        for (Cli cli : answers) {
            assertTrue(cli.out().contains(Caution.CODES.brief()), cli.out() + cli.err());
        }
    }

    // The gas room of the examples: it is shut, and the heater always burns.
    @Test
    void options_whereFuelBurns_takeTheHeaterOutBeforeAnythingIsShut(@TempDir Path folder) throws IOException {
        Cli cli = ask("options", Path.of("..", "docs", "examples", "winter-room", "gas.yaml"), folder);

        String console = unwrapped(cli.out());
        assertTrue(console.contains("Take the unflued heater out first: with it out, "), console);
        assertTrue(console.contains("DANGER: the run finds carbon dioxide"), console);
        Cli.json(folder.resolve("options.json")).get("measures").forEach(measure -> {
            assertFalse(measure.get("burnsFuelInTheRoom").asBoolean(), measure.toString());
            assertTrue(measure.get("unfluedHeaterOut").asBoolean(), measure.toString());
        });
    }

    // A measure of the user's own that shuts or sheets a room in which gas burns is not run, ranked or shown with days.
    @Test
    void options_ofTheUsersOwnThatShutFuelIn_areNotTried(@TempDir Path folder) throws IOException {
        String own = Files.readString(Path.of("..", "docs", "examples", "winter-room", "shut.yaml")) + """
                measures:
                  - {name: gas behind sheets, room: room, sheets: true, plant: [{kind: unflued LPG heater, kW: 4, on: always}]}
                  - {name: gas with the door open, room: room, open: always, plant: [{kind: unflued LPG heater, kW: 4, on: always}]}
                  - {name: paraffin by day, room: room, plant: [{kind: unflued paraffin heater, kW: 2, on: "daily 09:00-12:00"}]}
                """;

        Cli cli = ask("options", write(folder, own), folder);

        String console = unwrapped(cli.out());
        assertTrue(console.contains("NOT TRIED, DANGER: gas behind sheets"), console);
        assertTrue(console.contains("NOT TRIED, DANGER: paraffin by day"), console);
        assertFalse(console.contains("Gas with the door open saves"), "never a headline: " + console);
        assertTrue(console.contains("gas with the door open: "), console);
        assertTrue(console.contains("fuel burns in the room: carbon monoxide, never shut it"), console);
        assertEquals(
                2,
                Cli.json(folder.resolve("options.json"))
                        .get("notTriedForDanger")
                        .size());
        assertEquals(1, Cli.json(folder.resolve("options.json")).get("measures").size());
    }
}
