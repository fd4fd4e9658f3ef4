package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.chart.ShownAccount.ShownTerm;

/** The narrow water account: one row for each term, each bar starting where the last one ended. */
final class AccountSteps extends Picture {
    private static final Size SIZE = Size.NARROW;
    private static final double LEFT_PX = 2;
    private static final double RIGHT_PX = 356;
    private static final double BAR_PX = 16;
    private static final double LINE_PX = 18;
    private static final double BAR_BELOW_BASELINE_PX = 5;
    private static final double ROW_GAP_PX = 6;
    private static final double SECTION_GAP_PX = 12;

    private final AccountWords words;
    private final AccountBars.Scale scale;
    private final List<Line> lines = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final double bottom;

    AccountSteps(ShownAccount account) {
        super(SIZE);
        this.words = new AccountWords(account);
        this.scale = AccountBars.Scale.of(account, LEFT_PX, RIGHT_PX);
        List<ShownTerm> in = AccountJoin.joined(account.putIn(), account.totalIn());
        List<ShownTerm> gone = AccountJoin.joined(account.gone(), account.totalNow());
        List<ShownTerm> here = AccountJoin.joined(account.stillHere(), account.totalNow());
        List<ShownTerm> now = AccountJoin.filledApart(
                Stream.concat(gone.stream(), here.stream()).toList());
        Cursor afterIn = rows(section(new Cursor(LEFT_PX, 0), words.putIn()), AccountJoin.filledApart(in), false);
        Cursor afterGone = group(section(afterIn, words.whereNow()), words.gone(), now.subList(0, gone.size()));
        Cursor afterNow = group(afterGone, words.stillHere(), now.subList(gone.size(), now.size()));
        Cursor way = rows(section(afterNow, words.onTheWay()), account.onTheWay(), true);
        String cut = scale.cutWords(account.totalOnTheWay());
        this.bottom = (cut.isEmpty() ? way : lines(way, plain(cut))).baseline();
    }

    /** How far the layout has come: where the next bar starts, and the baseline of the last line. */
    private record Cursor(double x, double baseline) {
        Cursor line() {
            return new Cursor(x, baseline + LINE_PX);
        }
    }

    private record Line(Text text, double baseline) {}

    /** A bar, and the dotted line that leads to it from the one before. */
    private record Step(Rectangle2D bar, Fill fill, boolean dashed, Optional<Line2D> from) {}

    private Cursor section(Cursor from, String heading) {
        double gap = lines.isEmpty() ? 0 : SECTION_GAP_PX;
        Cursor start = new Cursor(LEFT_PX, from.baseline() + gap);
        return lines(start, Text.bold(heading, SIZE.headPx()));
    }

    private Cursor group(Cursor from, String heading, List<ShownTerm> terms) {
        return terms.isEmpty() ? from : rows(lines(from, bold(heading)), terms, false);
    }

    private Cursor lines(Cursor from, Text text) {
        Cursor at = from;
        for (Text line : Paragraph.wrapped(text, RIGHT_PX - LEFT_PX).lines()) {
            at = at.line();
            lines.add(new Line(line, at.baseline()));
        }
        return at;
    }

    private Cursor rows(Cursor from, List<ShownTerm> terms, boolean dashed) {
        Cursor at = from;
        for (ShownTerm term : terms) {
            Cursor named = lines(at, plain(term.text()));
            double width = Math.min(scale.px(term.litres()), RIGHT_PX - named.x());
            Rectangle2D bar =
                    new Rectangle2D.Double(named.x(), named.baseline() + BAR_BELOW_BASELINE_PX, width, BAR_PX);
            steps.add(new Step(bar, term.fill(), dashed, dropTo(bar)));
            at = new Cursor(bar.getMaxX(), bar.getMaxY() + ROW_GAP_PX);
        }
        return at;
    }

    /** The first bar of a section starts at the left edge and is led to by nothing; a bar cut off altogether too. */
    private Optional<Line2D> dropTo(Rectangle2D bar) {
        return bar.getX() <= LEFT_PX || bar.getWidth() == 0
                ? Optional.empty()
                : Optional.of(new Line2D.Double(
                        bar.getX(), steps.get(steps.size() - 1).bar().getMaxY(), bar.getX(), bar.getY()));
    }

    @Override
    double heightPx() {
        return bottom + ROW_GAP_PX;
    }

    @Override
    String story() {
        return words.story();
    }

    @Override
    void draw(Canvas canvas) {
        steps.forEach(step -> step.from().ifPresent(drop -> canvas.draw(drop, Ink.dashed(1, 2f, 2f), Ink.DARK)));
        lines.forEach(line -> canvas.boxed(line.text(), LEFT_PX, line.baseline(), Align.START));
        steps.stream()
                .filter(step -> step.bar().getWidth() > 0)
                .forEach(step ->
                        canvas.bar(step.bar(), step.fill(), step.dashed() ? Ink.dashed(1.4, 4f, 3f) : Ink.line(1.4)));
    }
}
