package org.limedry.cli.delay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.cli.page.Days;
import org.limedry.cli.site.PlannedJob.Cause;

/** What the ranges of a delay mean, in words for the client. */
final class RangeWords {
    private RangeWords() {}

    /** Returns what adds up and what a range is, in one sentence. */
    static String sentence(DelayStory story) {
        if (!story.reckonings().areMany()) {
            return adds(story) + " (" + story.runs().sets() + " runs).";
        }
        int count = story.reckonings().count();
        return adds(story) + "; a range is the least and the most of " + count + " reckonings ("
                + count * story.runs().sets()
                + " runs) with what nobody knows for sure set otherwise ("
                + unknowns(story.reckonings().unknowns()) + "), and ranges do not add up.";
    }

    private static String adds(DelayStory story) {
        int causes = story.runs().causes().size();
        return causes < 2
                ? "one cause, so all of it is its own"
                : "the likely figures add up, each the average over every order of adding the " + causes + " causes";
    }

    /** Those that a client can follow, and how many more. */
    private static String unknowns(Set<String> keys) {
        List<String> words = new ArrayList<>();
        if (keys.contains(DelayMembers.READY_SUCTION)) {
            words.add("how dry counts as ready");
        }
        if (keys.contains(DelayMembers.WETNESS)) {
            words.add("how wet the wall was");
        }
        int more = keys.size() - words.size();
        if (more > 0) {
            words.add(words.isEmpty() ? "unknowns: " + more : more + " more");
        }
        return String.join(", ", words);
    }

    /** Returns the range of the whole delay: ", between 56 and 119". */
    static String afterTotal(DelayStory story) {
        return story.reckonings().areMany() ? ", " + story.totalRange().lateWords() : "";
    }

    /** Returns the causes that may have been nothing, if there are any: "the wall (between 0 and 40 days), ...". */
    static Optional<String> maybeNothing(DelayStory story) {
        List<CauseDays> causes = story.maybeNothing();
        return causes.isEmpty()
                ? Optional.empty()
                : Optional.of(causes.stream()
                        .map(cause -> cause.cause().map(RangeWords::brief).orElse("dates as recorded") + " ("
                                + cause.range().words() + " days)")
                        .collect(Collectors.joining(", ", "", ".")));
    }

    private static String brief(Cause cause) {
        return switch (cause) {
            case ROOM -> "the day of release";
            case DOORS -> "the doors";
            case PLANT -> "heat and machines";
            case WEATHER -> "the weather";
            case WALL -> "the wall";
        };
    }

    /** Returns in how many reckonings a run ended before its plaster was ready, if in any. */
    static Optional<String> cutOff(DelayStory story) {
        int open = story.reckonings().open();
        return open == 0 || !story.reckonings().areMany()
                ? Optional.empty()
                : Optional.of("In " + open + " of the " + story.reckonings().count()
                        + " reckonings plaster was not ready by " + Days.full(lastDay(story))
                        + " and was counted to that day: ranges may be wider.");
    }

    private static LocalDate lastDay(DelayStory story) {
        return story.actual().day(story.runs().site().until().minusNanos(1));
    }
}
