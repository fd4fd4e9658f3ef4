package org.limedry.study.doors;

/** Why a door is to stand open, to be shut, or may be as it likes. */
public enum DoorReason {
    /** A heater without a flue burns in the room: whatever the walls say, air must move. */
    FUMES(Word.OPEN, true),
    /** Open doors would bring the air or a fresh coat to freezing. */
    FROST(Word.SHUT, true),
    /** Open doors would take more out of a coat in its first days than lime can give. */
    TOO_FAST(Word.SHUT, true),
    /** The dew point outdoors is above the coldest plastered wall: the air would wet it. */
    WETS_WALLS(Word.SHUT, false),
    /** Outdoor air holds more vapour than the room. */
    WETTER_OUT(Word.SHUT, false),
    /** Outdoor air holds less vapour than the room, and the walls give more off. */
    DRIER_OUT(Word.OPEN, false),
    /** Closer than instruments can tell. */
    WITHIN_ERROR(Word.NO_DIFFERENCE, false),
    /** Outdoor air holds less vapour, yet the walls give off no more: its cold undoes what its dryness does. */
    NO_GAIN(Word.NO_DIFFERENCE, false);

    private final Word word;
    private final boolean binding;

    DoorReason(Word word, boolean binding) {
        this.word = word;
        this.binding = binding;
    }

    /** What stands on the plan. */
    public enum Word {
        /** Open doors and windows. */
        OPEN,
        /** Shut them. */
        SHUT,
        /** As you like. */
        NO_DIFFERENCE
    }

    /** Returns the word that it gives. */
    public Word word() {
        return word;
    }

    /** Tells whether it may not be given up to make a plan simpler. */
    boolean isBinding() {
        return binding;
    }
}
