package org.limedry.cli.site;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Tagged;
import org.limedry.material.Assumed;
import org.limedry.reference.Estimate;

/** Everything that a site takes for granted. */
final class Assumptions {
    private static final int MOST_SUBJECTS = 3;
    private static final Pattern ITEM = Pattern.compile("\\[(\\d+)]");

    private final SiteParts parts;
    private final List<Assumption> list = new ArrayList<>();

    private final List<Guess> guesses;

    Assumptions(SiteParts parts, List<Guess> guesses) {
        this.parts = parts;
        this.guesses = guesses;
    }

    /** Returns them, the unknowns that are varied first. */
    List<Assumption> list() {
        Unknowns.varied(guesses).forEach(guess -> addGuess(guess, true));
        guesses.stream()
                .filter(guess -> !Unknowns.varied(guesses).contains(guess))
                .forEach(guess -> addGuess(guess, isVaried(guess.key())));
        addTaken();
        parts.faces().madeUp().forEach(this::addMadeUp);
        new WorkedOut(parts).list().forEach(list::add);
        return List.copyOf(list);
    }

    private boolean isVaried(String key) {
        return Unknowns.varied(guesses).stream().anyMatch(guess -> guess.key().equals(key));
    }

    private void addGuess(Guess guess, boolean varied) {
        Assumed assumed = guess.assumed();
        Optional<Estimate> learnt = parts.fitted().flatMap(file -> file.now(guess.uncertain()));
        Estimate estimate = learnt.orElse(assumed.estimate());
        list.add(new Assumption(
                assumed.words(),
                number(estimate.likely()),
                assumed.unit(),
                guess.isOpen() && varied ? number(estimate.low()) + " to " + number(estimate.high()) : "",
                learnt.isPresent() ? "fitted to the readings" : source(assumed.status(), assumed.basis())));
    }

    /** Writes a status and a basis as one source; MEMORY is the word of the tables for what has none. */
    static String source(String status, String basis) {
        String plain = status.replace("MEMORY", "from memory");
        return basis.isEmpty() ? plain : plain + ": " + basis;
    }

    static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(3));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** The same default in several places is one line. */
    private record Same(String meaning, String value, String source) {}

    private void addTaken() {
        Map<Same, List<String>> places = new LinkedHashMap<>();
        for (Entry entry : entries()) {
            for (Entry.Taken taken : entry.taken()) {
                places.computeIfAbsent(
                                new Same(upToSemicolon(taken.meaning()), taken.value(), taken.source()),
                                same -> new ArrayList<>())
                        .add(subject(taken.path()));
            }
        }
        places.forEach((same, subjects) ->
                list.add(new Assumption(same.meaning() + where(subjects), same.value(), "", "", same.source())));
    }

    private static String upToSemicolon(String meaning) {
        int semicolon = meaning.indexOf(';');
        return semicolon < 0 ? meaning : meaning.substring(0, semicolon);
    }

    private static String where(List<String> subjects) {
        List<String> named =
                subjects.stream().filter(subject -> !subject.isEmpty()).toList();
        if (named.isEmpty()) {
            return "";
        }
        return named.size() > MOST_SUBJECTS ? " (" + named.size() + " places)" : " (" + String.join(", ", named) + ")";
    }

    /** Turns {@code rooms.store.walls.north} into "store north" and {@code coats[1]} into "coats 2". */
    private static String subject(String path) {
        String plain = path.replaceAll("^(rooms|mixes)\\.|^place$", "").replaceAll("\\.(walls\\.)?", " ");
        return ITEM.matcher(plain).replaceAll(item -> " " + (Integer.parseInt(item.group(1)) + 1));
    }

    private List<Entry> entries() {
        List<Entry> all = new ArrayList<>();
        all.add(parts.entry());
        all.add(parts.entry().get(SiteKeys.PLACE));
        parts.rooms().values().forEach(room -> {
            all.add(room);
            all.addAll(room.get(RoomKeys.WALLS).values());
            all.addAll(room.get(RoomKeys.OPENINGS));
            room.get(RoomKeys.PLANT).stream().map(Tagged.Variant::entry).forEach(all::add);
        });
        all.addAll(parts.entry().get(SiteKeys.MIXES).values());
        all.addAll(parts.coats());
        return all;
    }

    private void addMadeUp(String face) {
        int colon = face.indexOf(": ");
        list.add(new Assumption(face.substring(0, colon), face.substring(colon + 2), "", "", "made up, not listed"));
    }
}
