package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.chart.DryingChart.Coat;

/**
 * The row above the plot that says when one coat is ready: a bar from earliest to latest, a thick tick at the likely
 * date, an arrow head where the range goes on past the run.
 */
final class ReadyRow {
    private static final int SMALLEST_PX = 13;
    private static final double BAR_PX = 10;
    private static final double ARROW_PX = 10;
    private static final double GAP_PX = 10;
    private static final double BESIDE_PITCH_PX = 30;
    private static final double BAR_BELOW_WORDS_PX = 27;

    private final Coat coat;
    private final TimeScale scale;
    private final ReadyWords says;
    private final Paragraph words;
    private final Point2D wordsAt;
    private final double middle;
    private final double bottom;

    private ReadyRow(Coat coat, TimeScale scale, Paragraph words, Point2D wordsAt, double middle) {
        this.coat = coat;
        this.scale = scale;
        this.says = new ReadyWords(scale.timeline());
        this.words = words;
        this.wordsAt = wordsAt;
        this.middle = middle;
        this.bottom = middle + BESIDE_PITCH_PX / 2;
    }

    /** Lays a row out below {@code top}, its words beside the bar if they fit and above it if not. */
    static ReadyRow below(double top, Coat coat, String name, TimeScale scale, Size size) {
        return saying(name + ": " + new ReadyWords(scale.timeline()).shortForm(coat), top, coat, scale, size);
    }

    /** Lays a row out below {@code top} with words of its own. */
    static ReadyRow saying(String words, double top, Coat coat, TimeScale scale, Size size) {
        Text text = Text.plain(words, size.textPx());
        double middleBeside = top + BESIDE_PITCH_PX / 2;
        double wordsTop = middleBeside - text.heightPx() / 2;
        ReadyRow beside = new ReadyRow(coat, scale, Paragraph.of(text), new Point2D.Double(0, wordsTop), middleBeside);
        Optional<Double> left = size == Size.WIDE ? beside.leftOfWordsBeside(text, size) : Optional.empty();
        if (left.isPresent()) {
            return new ReadyRow(coat, scale, beside.words, new Point2D.Double(left.get(), wordsTop), middleBeside);
        }
        Paragraph above = aboveTheBar(text, size);
        double middle = top + above.lines().size() * above.pitchPx() + BAR_BELOW_WORDS_PX - BESIDE_PITCH_PX / 2;
        return new ReadyRow(coat, scale, above, new Point2D.Double(0, top + 5), middle);
    }

    /** A line that would else break may be a little smaller. */
    private static Paragraph aboveTheBar(Text text, Size size) {
        Text smaller = Text.plain(text.words(), size.pick(text.sizePx(), SMALLEST_PX));
        return text.widthPx() > size.widthPx() && smaller.widthPx() <= size.widthPx()
                ? Paragraph.of(smaller)
                : Paragraph.wrapped(text, size.widthPx());
    }

    private Optional<Double> leftOfWordsBeside(Text text, Size size) {
        double right = rightEnd() + GAP_PX;
        double left = leftEnd() - GAP_PX - text.widthPx();
        if (right + text.widthPx() <= size.widthPx()) {
            return Optional.of(right);
        }
        return left >= 0 ? Optional.of(left) : Optional.empty();
    }

    double bottom() {
        return bottom;
    }

    Coat coat() {
        return coat;
    }

    /** Returns where the likely date lies across the drawing, if it lies within the run. */
    Optional<Double> likelyX() {
        return says.inRun(coat.ready().likely()).map(this::x);
    }

    boolean byHand() {
        return coat.ready() instanceof Ready.ByHand;
    }

    /** Returns the dotted line from the bar down to {@code y}, if there is a likely date. */
    Optional<Line2D> dropTo(double y) {
        return likelyX().map(x -> new Line2D.Double(x, middle, x, y));
    }

    void drawBar(Canvas canvas) {
        Optional<Instant> first = says.inRun(coat.ready().dates().findFirst());
        if (!byHand() && first.isPresent() && rightBarEnd() > x(first.get())) {
            Rectangle2D bar =
                    new Rectangle2D.Double(x(first.get()), middle - BAR_PX / 2, rightBarEnd() - x(first.get()), BAR_PX);
            Marks.range(canvas, bar, Fill.WHITE);
        }
        if (goesOn()) {
            Marks.goesOn(canvas, new Point2D.Double(scale.right(), middle), ARROW_PX, ARROW_PX - 1);
        }
        likelyX().ifPresent(x -> drawLikely(canvas, x));
    }

    private void drawLikely(Canvas canvas, double x) {
        if (byHand()) {
            Marks.diamond(canvas, new Point2D.Double(x, middle), Ink.BLACK);
        } else {
            Marks.likely(canvas, x, middle, BAR_PX);
        }
    }

    void drawWords(Canvas canvas) {
        canvas.boxed(words, wordsAt.getX(), wordsAt.getY(), Align.START);
    }

    private boolean goesOn() {
        return !byHand() && says.endsLate(coat.ready());
    }

    private double x(Instant at) {
        return scale.x(scale.timeline().clamp(at));
    }

    private double rightBarEnd() {
        return goesOn() ? scale.right() : knownX().get(knownX().size() - 1);
    }

    private double leftEnd() {
        return knownX().isEmpty() ? scale.right() : knownX().get(0) - Marks.DIAMOND_PX;
    }

    private double rightEnd() {
        return goesOn() ? scale.right() + ARROW_PX : rightBarEnd() + Marks.DIAMOND_PX;
    }

    private List<Double> knownX() {
        return coat.ready()
                .dates()
                .filter(at -> says.inRun(Optional.of(at)).isPresent())
                .map(this::x)
                .toList();
    }
}
