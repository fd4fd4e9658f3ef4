package org.limedry.cli.chart;

import java.time.Instant;
import java.util.Optional;
import org.limedry.cli.chart.DryingChart.Coat;

/** Says when a coat is ready, as on a chart and as in a sentence. */
final class ReadyWords {
    private final Timeline timeline;

    ReadyWords(Timeline timeline) {
        this.timeline = timeline;
    }

    /** Returns the short form: "likely 7 Jan". */
    String shortForm(Coat coat) {
        String end = DateWords.unbroken(timeline.lastDay());
        Ready ready = coat.ready();
        if (ready instanceof Ready.ByHand hand) {
            return "your test, " + shortDay(hand.passed());
        }
        Optional<Instant> earliest = inRun(ready.dates().findFirst());
        Optional<Instant> likely = inRun(ready.likely());
        if (likely.isPresent()) {
            String known = "likely " + shortDay(likely.get());
            return endsLate(ready) ? known + ", after " + end + " if not" : known;
        }
        if (earliest.isPresent()) {
            return "likely after " + end + ", " + shortDay(earliest.get()) + " if all goes well";
        }
        return coat.laid().isEmpty() ? "not laid by " + end : "not by " + end + ", the end of the run";
    }

    /** Returns the sentence form: "likely ready on 7 January, on 17 December if all goes well". */
    String sentence(Coat coat) {
        Ready ready = coat.ready();
        if (ready instanceof Ready.ByHand hand) {
            return "ready by your test on " + longDay(hand.passed());
        }
        String end = DateWords.longDay(timeline.lastDay());
        Optional<Instant> likely = inRun(ready.likely());
        String middle = likely.map(at -> "likely ready on " + longDay(at))
                .orElse(coat.laid().isEmpty() ? "not laid by " + end : "not likely ready by " + end);
        if (ready instanceof Ready.Range range) {
            String early = inRun(range.earliest())
                    .map(at -> ", on " + longDay(at) + " if all goes well")
                    .orElse("");
            String late = inRun(range.latest())
                    .map(at -> ", on " + longDay(at) + " if not")
                    .orElse(likely.isPresent() ? ", after " + end + " if not" : "");
            return middle + early + late;
        }
        return middle;
    }

    /** Returns whether the late end of the range lies past the end of the run. */
    boolean endsLate(Ready ready) {
        if (ready instanceof Ready.Range range) {
            return inRun(range.latest()).isEmpty();
        }
        return inRun(ready.likely()).isEmpty();
    }

    /** Returns the date unless it lies past the end of the run. */
    Optional<Instant> inRun(Optional<Instant> date) {
        return date.filter(at -> !at.isAfter(timeline.to()));
    }

    private String shortDay(Instant at) {
        return DateWords.unbroken(timeline.day(at));
    }

    private String longDay(Instant at) {
        return DateWords.longDay(timeline.day(at));
    }
}
