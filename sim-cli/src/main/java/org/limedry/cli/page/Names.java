package org.limedry.cli.page;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.limedry.lime.ReadinessRule;

/** What things are called on the page. */
public final class Names {
    private static final List<String> ORDINALS = List.of("first", "second", "third", "fourth", "fifth", "sixth");

    /** Names of walls that say only where the wall is. */
    private static final Set<String> PLACES = Set.of(
            "north",
            "north-east",
            "east",
            "south-east",
            "south",
            "south-west",
            "west",
            "north-west",
            "back",
            "end",
            "front",
            "left",
            "party",
            "right",
            "side",
            "spine");

    private Names() {}

    /** Returns "first", "second", and from the seventh on "7th". */
    public static String ordinal(int number) {
        return number <= ORDINALS.size() ? ORDINALS.get(number - 1) : number + "th";
    }

    /** Returns the name of a wall with the word "wall" where it only says where the wall is: "store north wall". */
    public static String wall(String name) {
        String last = name.substring(name.lastIndexOf(' ') + 1).toLowerCase(Locale.ROOT);
        return PLACES.contains(last) ? name + " wall" : name;
    }

    /** Returns what a rule looks for at the wall, to follow its name; empty if its name is all that is known. */
    public static String meaning(ReadinessRule rule) {
        return switch (rule.name()) {
            case "green-hard" -> " (nail marks it, knuckle does not)";
            case "dry-white" -> " (green-hard, and dry and white at the face)";
            default -> "";
        };
    }

    /** Returns the text with its first letter as a capital. */
    public static String capital(String text) {
        int first = Math.min(text.length(), 1);
        return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
    }
}
