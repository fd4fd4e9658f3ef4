package org.limedry.cli.delay;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.limedry.cli.delay.DelayStory.Range;
import org.limedry.cli.delay.DelayStory.Told;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.site.PlannedJob.Cause;
import org.limedry.simulation.Outcome.CoatResult;

/** The figures of a delay, exactly, for other programs. */
final class DelayTables {
    private DelayTables() {}

    /** Returns one row for each figure. */
    static CsvSheet csv(DelayStory story) {
        List<List<?>> rows = new ArrayList<>();
        for (Told told : story.causes()) {
            rows.add(List.of("cause", told.words(), "", "", told.days(), "days"));
        }
        rows.add(List.of("cause", "total", "", "", story.delay().totalDays(), "days"));
        for (LetterRow row : LetterRows.of(story)) {
            rows.add(List.of("row", row.item(), row.planned(), row.actual(), row.difference(), ""));
        }
        for (MonthRow month : MonthRow.of(story)) {
            rows.addAll(month.sheetRows());
        }
        return new CsvSheet(
                List.of("part", "item", "planned_or_normal", "actual_or_record", "difference", "unit"), rows);
    }

    /** Returns everything as JSON. */
    static ObjectNode json(DelayStory story) {
        ObjectNode root = JsonText.object();
        JsonText.putCautions(root, DelayAnswer.situation(story));
        root.put("site", story.runs().site().name());
        root.put("wall", story.planned().wall());
        root.put("totalDays", story.delay().totalDays());
        root.put("totalDaysShown", story.days());
        root.put("atLeast", story.delay().isOpen());
        story.totalRange().ifPresent(range -> root.set("totalDaysRange", range(range)));
        ArrayNode causes = root.putArray("causes");
        story.causes().forEach(told -> causes.add(cause(told)));
        root.set("planned", side(story, story.planned()));
        root.set("actual", side(story, story.actual()));
        root.put("dryingDayLitres", story.targetLitres());
        ArrayNode runs = root.putArray("runs");
        for (int set = 0; set < story.ready().size(); set++) {
            ObjectNode run = runs.addObject();
            ArrayNode happened = run.putArray("asItHappened");
            for (int i = 0; i < story.runs().causes().size(); i++) {
                if ((set & (1 << i)) != 0) {
                    happened.add(word(story.runs().causes().get(i)));
                }
            }
            put(run, "ready", story.ready().get(set));
        }
        return root;
    }

    private static ObjectNode cause(Told told) {
        ObjectNode cause = JsonText.object();
        cause.put("cause", told.cause().map(DelayTables::word).orElse("record"));
        cause.put("words", told.words());
        cause.put("days", told.days());
        cause.put("daysShown", told.shown());
        cause.put("daysSoonerHadItAloneGoneAsPlanned", told.soonerDays());
        told.range().ifPresent(range -> cause.set("daysRange", range(range)));
        return cause;
    }

    private static ObjectNode range(Range range) {
        return JsonText.object().put("oneInFive", range.low()).put("fourInFive", range.high());
    }

    private static String word(Cause cause) {
        return cause.name().toLowerCase(Locale.ROOT);
    }

    private static ObjectNode side(DelayStory story, JobSide side) {
        ObjectNode node = JsonText.object();
        ArrayNode coats = node.putArray("coats");
        for (CoatResult coat : side.coats()) {
            ObjectNode one = coats.addObject();
            one.put("coat", coat.number());
            put(one, "laid", coat.laid());
            put(one, "ready", coat.ready());
            one.put("byHand", coat.byHand());
        }
        node.put("weather", side.site().weatherName());
        node.put("laidLitresInRoom", side.laidLitres());
        node.put("carriedOffLitres", side.roomDays().totalLitres());
        node.put("days", side.roomDays().count());
        node.put("dryingDays", side.roomDays().drying(story.targetLitres()));
        return node;
    }

    private static void put(ObjectNode node, String name, Optional<Instant> at) {
        node.put(name, at.map(Instant::toString).orElse(null));
    }
}
