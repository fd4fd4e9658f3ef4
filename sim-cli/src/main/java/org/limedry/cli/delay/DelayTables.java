package org.limedry.cli.delay;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
        for (CauseDays cause : story.causes()) {
            rows.add(days(cause.words(), cause.days(), cause.range()));
        }
        rows.add(days("total", story.delay().totalDays(), story.totalRange()));
        for (LetterRow row : LetterRows.of(story)) {
            rows.add(List.of("row", row.item(), row.planned(), row.actual(), row.difference(), "", "", ""));
        }
        for (MonthRow month : MonthRow.of(story)) {
            month.sheetRows().forEach(row -> rows.add(withoutRange(row)));
        }
        return new CsvSheet(
                List.of("part", "item", "planned_or_normal", "actual_or_record", "difference", "low", "high", "unit"),
                rows);
    }

    private static List<?> days(String words, double days, DaysRange range) {
        return List.of("cause", words, "", "", days, range.low(), range.high(), "days");
    }

    private static List<?> withoutRange(List<?> row) {
        List<Object> wider = new ArrayList<>(row);
        wider.addAll(wider.size() - 1, List.of("", ""));
        return wider;
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
        root.set("totalDaysRange", range(story.totalRange()));
        root.put("reckonings", story.reckonings().count());
        root.put("reckoningsCutOff", story.reckonings().open());
        root.put("readyBasis", story.readyBasis().name().toLowerCase(Locale.ROOT));
        ArrayNode causes = root.putArray("causes");
        story.causes().forEach(cause -> causes.add(cause(cause)));
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

    private static ObjectNode cause(CauseDays days) {
        ObjectNode cause = JsonText.object();
        cause.put("cause", days.cause().map(DelayTables::word).orElse("record"));
        cause.put("words", days.words());
        cause.put("days", days.days());
        cause.put("daysShown", days.shown());
        cause.put("daysSoonerHadItAloneGoneAsPlanned", days.soonerDays());
        cause.set("daysRange", range(days.range()));
        return cause;
    }

    private static ObjectNode range(DaysRange range) {
        return JsonText.object()
                .put("low", range.low())
                .put("high", range.high())
                .put("lowShown", range.lowShown())
                .put("highShown", range.highShown());
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
