package org.limedry.cli.safety;

import static org.limedry.cli.safety.Advised.BLOW;
import static org.limedry.cli.safety.Advised.DEHUMIDIFY;
import static org.limedry.cli.safety.Advised.DRILL;
import static org.limedry.cli.safety.Advised.FINISH;
import static org.limedry.cli.safety.Advised.HEAT;
import static org.limedry.cli.safety.Advised.MIST;
import static org.limedry.cli.safety.Advised.OPEN;
import static org.limedry.cli.safety.Advised.OPEN_UP;
import static org.limedry.cli.safety.Advised.RUN_BY_NIGHT;
import static org.limedry.cli.safety.Advised.SHEET;
import static org.limedry.cli.safety.Advised.SHUT;
import static org.limedry.cli.safety.Advised.TOUCH;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * A caution: the danger first, then the act, and what makes it due. In the order in which they are read.
 *
 * <p>The wording follows general first-aid, fire and site guidance; which, and what of it is from memory, is in
 * docs/cautions.md. None of it stands above local codes or a competent person, and the last caution says so.
 */
public enum Caution {
    /** Carbon dioxide above the working limit. */
    BAD_AIR(
            "Bad air: keep out",
            "put the fuel off from outside, open up from outside, let nobody in until a competent person has tested the air;"
                    + " if someone is down inside, call the emergency services and do not follow.",
            "Bad air: KEEP OUT. Fuel off and open up from outside; competent person tests.",
            at -> at.has(Has.BAD_AIR)),
    /** Fuel burns in the air of a room. */
    UNFLUED(
            "Carbon monoxide from an unflued heater kills, and has no smell",
            "put it out and take it out; never in a shut or sheeted room or near sleepers. An alarm, always. Headache or"
                    + " dizzy: get out, get help.",
            "Unflued heater: carbon monoxide kills. Put it out, take it out of the building.",
            at -> at.has(Has.UNFLUED_GAS, Has.UNFLUED_PARAFFIN)),
    /** Bottled gas. */
    GAS_BOTTLE(
            "Gas bottles explode in a fire",
            "keep them upright, outdoors, valve shut when not in use.",
            "Gas bottles: outdoors, upright, valve shut.",
            at -> at.has(Has.UNFLUED_GAS)),
    /** Paraffin. */
    PARAFFIN(
            "Paraffin spilt on a hot heater flares up",
            "let it go cold and fill it outdoors.",
            "Paraffin: fill it cold and outdoors.",
            at -> at.has(Has.UNFLUED_PARAFFIN)),
    /** Where heat is spoken of, or the cold asks for it. */
    NO_UNFLUED(
            "No unflued gas or paraffin heater indoors",
            "carbon monoxide kills, and it wets walls.",
            "No unflued heater indoors (carbon monoxide, water).",
            at -> (at.heats() || at.has(Has.FROST, Has.COLD)) && !at.burnsInTheRoom()),
    /** A flue. */
    FLUE(
            "A blocked flue or too little air lets carbon monoxide into the room",
            "have flue and air supply checked by a competent person before it is lit; keep a carbon monoxide alarm.",
            "Flued heater: flue and air supply checked, carbon monoxide alarm.",
            at -> at.has(Has.FLUED_HEATER)),
    /** A fan or a shut room beside a flue. */
    SPILLAGE(
            "A fan, or a room shut tight, pulls fumes back down a flue",
            "never beside a lit stove or flued heater, unless a competent person has tested it for spillage.",
            "Fan or shut room with a lit flue: fumes come back. Not together.",
            at -> at.has(Has.FLUED_HEATER) && (at.has(Has.FAN) || at.advises(BLOW, SHUT, SHEET))),
    /** Shutting up. */
    VENTS(
            "A fire, boiler or floor may need the vent that you shut",
            "leave flues, air bricks and vents open; ask a competent person first.",
            "Shutting up: leave flues, air bricks and vents open.",
            at -> at.advises(SHUT, SHEET)),
    /** Heaters. */
    FIRE(
            "Heaters set fire to old buildings",
            "well clear of timber, dust and sheets, guarded; ask the insurer, keep to the fire plan.",
            "Heaters: clear of timber and sheets.",
            Situation::heats),
    /** What runs alone. */
    LEFT_ON(
            "A machine left on alone can start a fire",
            "by night only electric kit made for it, with thermostat and cut-outs, where insurer and fire plan allow; all else"
                    + " off when the last one leaves.",
            "By night: only electric kit made for it; all else off.",
            at -> at.has(Has.RUNS_BY_NIGHT) || at.advises(RUN_BY_NIGHT)),
    /** Electrics. */
    ELECTRICS(
            "Wet walls and electrics kill",
            "protected supply only, checked by a competent person.",
            "Wet electrics: competent person.",
            at -> at.has(Has.ELECTRIC_HEATER, Has.FAN, Has.DEHUMIDIFIER) || at.advises(HEAT, BLOW, DEHUMIDIFY)),
    /** Mist. */
    SPRAY(
            "Mist on sockets and lamps kills",
            "electrics off and covered before you spray.",
            "Misting: electrics off and covered first.",
            at -> at.has(Has.MISTING) || at.advises(MIST)),
    /** Lime. */
    LIME(
            "Lime burns eyes and skin",
            "goggles, gloves, long sleeves. In the eye: rinse at once with clean water, 20 minutes, get medical help. On the"
                    + " skin: wash it off.",
            "Lime burns: goggles, gloves. In the eye: rinse 20 min, get help.",
            at -> at.has(Has.LIME) || at.advises(TOUCH)),
    /** Quicklime. */
    QUICKLIME(
            "Quicklime boils and spits when wetted",
            "trained hands, face shield, never a closed tub. To putty: lime into water. Hot mixing: water onto the open heap of"
                    + " lime and sand, little by little, and stand back.",
            "Quicklime spits: trained hands, face shield, no closed tub.",
            at -> at.has(Has.QUICKLIME)),
    /** Dust of what is old. */
    DUST(
            "Old walls hold lead paint, asbestos and silica",
            "have them tested before you drill, scrape or hack; fitted mask, wet work, no dry sweeping.",
            "Before drilling or scraping: test for lead and asbestos; mask, wet work.",
            at -> at.has(Has.OLD_PAINT) || at.advises(DRILL, OPEN_UP)),
    /** Consent. */
    CONSENT(
            "Listed or protected building",
            "ask for consent before you drill, open up or put on a finish.",
            "Listed building: consent before drilling, opening up or painting.",
            at -> at.advises(DRILL, OPEN_UP, FINISH)),
    /** Height. */
    HEIGHT(
            "Falls kill",
            "a tower or hop-up put up by someone competent, not a ladder with a full hawk; dry boards.",
            "At height: tower or hop-up, not a ladder.",
            at -> at.has(Has.HEIGHT)),
    /** Open doors. */
    OPEN_DOORS(
            "An open door lets in thieves, children and rain",
            "somebody stays with it; by night only if owner and insurer agree.",
            "Open doors: somebody stays; by night ask owner and insurer.",
            at -> at.has(Has.OPEN_BY_NIGHT) || at.advises(OPEN, Advised.OPEN_BY_NIGHT)),
    /** Bats. */
    BATS(
            "Bats and nesting birds are protected",
            "look before you open by night, shut or sheet up; ask the wildlife authority.",
            "Bats, nests: look before opening by night or sheeting up.",
            at -> at.has(Has.OPEN_BY_NIGHT) || at.advises(Advised.OPEN_BY_NIGHT, SHUT, SHEET)),
    /** Frost. */
    FROST(
            "Frost breaks wet lime",
            "cover or gently warm the work on nights at risk.",
            "Frost: cover the work.",
            at -> at.has(Has.FROST)),
    /** Shut rooms. */
    SOFT(
            "Dry is not hard",
            "a shut room starves lime of fresh air; open up daily, test by hand.",
            "Dry is not hard.",
            at -> at.has(Has.DRY_BUT_SOFT) || (at.advises(DEHUMIDIFY) && at.advises(SHUT, SHEET))),
    /** Laths. */
    ROT(
            "Wet laths rot",
            "have a competent person look at the timber before it is covered.",
            "Wet laths rot.",
            at -> at.has(Has.WET_LATHS)),
    /** Mould. */
    MOULD(
            "Mould makes people ill",
            "fitted mask and gloves, wipe it wet, never brush it dry; much of it: a competent person.",
            "Mould: mask, gloves, wipe wet.",
            at -> at.has(Has.MOULD)),
    /** Always. */
    CODES(
            "Local codes and the competent person come first",
            "",
            "Local codes and the competent person first.",
            at -> true);

    private final String danger;
    private final String act;
    private final String brief;
    /** Holds nothing but constants. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Predicate<Situation> due;

    Caution(String danger, String act, String brief, Predicate<Situation> due) {
        this.danger = danger;
        this.act = act;
        this.brief = brief;
        this.due = due;
    }

    /** Returns the cautions that are due, in the order in which they are read. */
    static List<Caution> due(Situation situation) {
        return Arrays.stream(values())
                .filter(caution -> caution.due.test(situation))
                .toList();
    }

    /** Returns the danger, to be followed by a colon and the act if there is one. */
    public String danger() {
        return danger;
    }

    /** Returns what to do or not to do; empty if the danger says it all. */
    public String act() {
        return act;
    }

    /** Returns both in a few words of plain ASCII. */
    public String brief() {
        return brief;
    }

    /** Returns danger and act as one text. */
    public String text() {
        return act.isEmpty() ? danger + "." : danger + ": " + act;
    }
}
