package org.limedry.cli.delay;

import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.chart.DateWords;
import org.limedry.cli.page.Figures;
import org.limedry.cli.site.PlannedJob.Cause;

/** The plain paragraph: what had been agreed and what happened, in the past tense, nobody blamed. */
final class LetterStory {
    private LetterStory() {}

    static String of(DelayStory story) {
        JobSide planned = story.planned();
        JobSide actual = story.actual();
        List<String> sentences = new ArrayList<>();
        sentences.add("The plan had the first coat on " + DateWords.longDay(planned.day(planned.laid()))
                + " and the last one ready on " + DateWords.longDay(story.plannedReady()) + ", "
                + DelayWords.days(planned.daysTaken()) + " later.");
        story.facts()
                .ownRelease()
                .filter(released -> !released.planned().equals(released.actual()))
                .ifPresent(released -> sentences.add("The room was released on "
                        + DateWords.longDay(released.actual()) + ", "
                        + DelayWords.later(released.planned(), released.actual()) + " than agreed."));
        conditions(story, sentences);
        String ready = actual.ready().isPresent() ? "ready took " : "the end of the run went ";
        sentences.add("From the first coat to " + ready + DelayWords.days(actual.daysTaken()) + ".");
        int drying = actual.roomDays().drying(story.targetLitres());
        sentences.add("On " + (drying == 0 ? "none" : Figures.whole(drying)) + " of them the room gave off "
                + Figures.litres(story.targetLitres()) + " litres or more, the mean of a planned day.");
        return String.join(" ", sentences);
    }

    private static void conditions(DelayStory story, List<String> sentences) {
        DelayFacts facts = story.facts();
        List<Cause> causes = story.runs().causes();
        if (causes.contains(Cause.DOORS) && facts.doorsDiffer()) {
            sentences.add("On working days the doors were open "
                    + DelayWords.hoursFigure(facts.actualDoorHours()) + " hours where "
                    + DelayWords.hoursFigure(facts.plannedDoorHours()) + " had been agreed.");
        }
        if (causes.contains(Cause.PLANT)) {
            sentences.add(facts.machinesSentence());
        }
        if (causes.contains(Cause.WALL)
                && !DelayFacts.wetness(story.planned()).equals(DelayFacts.wetness(story.actual()))) {
            sentences.add("The wall was found " + DelayFacts.wetness(story.actual()) + ", stated as "
                    + DelayFacts.wetness(story.planned()) + ".");
        }
    }
}
