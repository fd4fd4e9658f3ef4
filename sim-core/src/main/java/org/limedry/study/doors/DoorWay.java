package org.limedry.study.doors;

import org.limedry.climate.Schedule;

/** Ways of handling the doors over the days of a plan. */
public enum DoorWay {
    /** By the plan. */
    PLAN,
    /** Open from 6 to 20 every day, shut at night. */
    OPEN_BY_DAY,
    /** Open day and night. */
    ALWAYS_OPEN,
    /** Shut. */
    ALWAYS_SHUT;

    /** Returns when the doors stand open, days of the plan only. */
    public Schedule open(DoorPlan plan) {
        DoorWindow window = plan.question().window();
        return switch (this) {
            case PLAN -> plan.open();
            case OPEN_BY_DAY -> window.daytime();
            case ALWAYS_OPEN -> Schedule.always(window.from(), window.until());
            case ALWAYS_SHUT -> Schedule.never();
        };
    }
}
