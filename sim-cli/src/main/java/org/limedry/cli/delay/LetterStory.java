package org.limedry.cli.delay;

import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.chart.DateWords;
import org.limedry.cli.page.Figures;
import org.limedry.cli.site.PlannedJob.Cause;

/** The plain paragraph: what had been agreed and what happened, what is forecast told as forecast, nobody blamed. */
final class LetterStory {
    private LetterStory() {}

    static String of(DelayStory story) {
        JobSide planned = story.planned();
        JobSide actual = story.actual();
        List<String> sentences = new ArrayList<>();
        sentences.add("The modelled plan has the first coat on " + DateWords.longDay(planned.day(planned.laid()))
                + " and the last one ready on " + DateWords.longDay(story.plannedReady()) + ", "
                + DelayWords.days(planned.daysTaken()) + " later.");
        story.facts()
                .ownRelease()
                .filter(released -> !released.planned().equals(released.actual()))
                .ifPresent(released -> sentences.add("The room was released on "
                        + DateWords.longDay(released.actual()) + ", "
                        + DelayWords.later(released.planned(), released.actual()) + " than agreed."));
        conditions(story, sentences);
        sentences.add(taken(story));
        int drying = actual.roomDays().drying(story.targetLitres());
        sentences.add("On " + (drying == 0 ? "none" : Figures.whole(drying)) + " of them the room "
                + (isForecast(story) ? "gives" : "gave") + " off " + Figures.litres(story.targetLitres())
                + " litres or more, the mean of a day of the modelled plan.");
        return String.join(" ", sentences);
    }

    private static boolean isForecast(DelayStory story) {
        return story.readyBasis() == DateBasis.FORECAST;
    }

    private static String taken(DelayStory story) {
        String days = DelayWords.days(story.actual().daysTaken());
        if (story.actual().ready().isEmpty()) {
            return "From the first coat to the end of the run " + (isForecast(story) ? "are " : "went ") + days + ".";
        }
        return isForecast(story)
                ? "The forecast is " + days + " from the first coat to ready."
                : "From the first coat to ready took " + days + ".";
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
