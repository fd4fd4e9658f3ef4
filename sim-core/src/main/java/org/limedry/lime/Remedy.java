package org.limedry.lime;

/** What a plasterer can do about a coat that dries too fast. */
public enum Remedy {
    /** Mist it. */
    MIST("mist the coat once or twice a day, away from anything electric"),
    /** Screen it. */
    SCREEN("hang damp hessian or sheeting before it"),
    /** Less heat. */
    TURN_DOWN("turn the heat down"),
    /** Heat elsewhere. */
    TURN_AWAY("turn the heater or fan away from the plaster"),
    /** Less wind. */
    SHUT("shut the draught out"),
    /** A wetter wall. */
    WET_THE_WALL("wet the wall before the next coat, until it stays damp but not glossy");

    private final String words;

    Remedy(String words) {
        this.words = words;
    }

    /** Returns what to do, as a piece of a sentence. */
    public String words() {
        return words;
    }
}
