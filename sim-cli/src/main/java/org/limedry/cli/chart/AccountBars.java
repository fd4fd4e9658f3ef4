package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.chart.ShownAccount.ShownTerm;

/** The wide water account: two bars of one length, and below them what condensed on the way. */
final class AccountBars implements Picture {
    private static final Size SIZE = Size.WIDE;
    private static final double LEFT_PX = 4;
    private static final double RIGHT_PX = 676;
    private static final double BAR_PX = 46;
    private static final double SPARE_PX = 8;
    private static final double BRACKET_ABOVE_PX = 8;
    private static final double BRACKET_GAP_PX = 2;

    private final ShownAccount account;
    private final AccountWords words;
    private final AccountScale scale;
    private final Bar in;
    private final Bar now;
    private final WayBar way;
    private final double wayTop;

    AccountBars(ShownAccount account) {
        this.account = account;
        this.words = new AccountWords(account);
        this.scale = AccountScale.of(account, LEFT_PX, RIGHT_PX);
        this.in = bar(AccountJoin.joined(account.putIn(), account.totalIn()), 26);
        boolean headBesideNames =
                in.leaders().leavesRoomAtLeft(head(words.whereNow()).widthPx() + 24);
        this.now = bar(nowTerms(), in.bottom() + (headBesideNames ? 36 : 62));
        this.wayTop = now.bottom() + 40;
        this.way = new WayBar(account, scale, wayTop);
    }

    private List<ShownTerm> nowTerms() {
        return Stream.concat(
                        AccountJoin.joined(account.gone(), account.totalNow()).stream(),
                        AccountJoin.joined(account.stillHere(), account.totalNow()).stream())
                .toList();
    }

    /** A bar with the list of names that do not fit into it. */
    private record Bar(List<Segment> segments, Leaders leaders, double barBottom) {
        double bottom() {
            return barBottom + leaders.heightPx();
        }
    }

    private record Segment(ShownTerm term, Rectangle2D box, Optional<Paragraph> inside) {}

    private Bar bar(List<ShownTerm> terms, double top) {
        List<Segment> segments = new ArrayList<>();
        double left = LEFT_PX;
        for (ShownTerm term : AccountJoin.filledApart(terms)) {
            double width = scale.px(term.litres());
            Rectangle2D box = new Rectangle2D.Double(left, top, width, BAR_PX);
            segments.add(new Segment(term, box, inside(term, width)));
            left += width;
        }
        List<Leaders.Named> outside = segments.stream()
                .filter(segment -> segment.inside().isEmpty())
                .map(segment -> new Leaders.Named(
                        Text.plain(segment.term().text(), SIZE.textPx()),
                        segment.box().getCenterX()))
                .toList();
        double bottom = top + BAR_PX;
        return new Bar(segments, Leaders.below(bottom, outside), bottom);
    }

    /** Returns the name set to fit into its segment with room to spare, if it can be. */
    private static Optional<Paragraph> inside(ShownTerm term, double widthPx) {
        Text oneLine = Text.bold(term.text(), SIZE.headPx());
        Text twoLines = Text.bold(term.text(), SIZE.textPx());
        return Stream.concat(Stream.of(Paragraph.of(oneLine)), Paragraph.inTwo(twoLines).stream())
                .filter(setting -> setting.widthPx() + 2 * SPARE_PX <= widthPx)
                .findFirst();
    }

    @Override
    public double widthPx() {
        return SIZE.widthPx();
    }

    @Override
    public double heightPx() {
        return wayTop + (words.nothingCondensed() ? 0 : way.heightPx() + 8);
    }

    @Override
    public String story() {
        return words.story();
    }

    @Override
    public void draw(Canvas canvas) {
        canvas.text(head(words.putIn()), LEFT_PX, 18, Align.START);
        canvas.text(head(words.whereNow()), LEFT_PX, nowHeadBaseline(), Align.START);
        canvas.text(head(words.onTheWay()), LEFT_PX, wayTop - 12, Align.START);
        uprights(canvas);
        brackets(canvas);
        Stream.of(in, now).forEach(bar -> {
            bar.segments().forEach(segment -> draw(canvas, segment));
            bar.leaders().draw(canvas);
        });
        if (!words.nothingCondensed()) {
            way.draw(canvas);
        }
    }

    private double nowHeadBaseline() {
        return now.barBottom() - BAR_PX - 34;
    }

    private static Text head(String words) {
        return Text.bold(words, SIZE.headPx());
    }

    private static void draw(Canvas canvas, Segment segment) {
        Rectangle2D box = segment.box();
        canvas.bar(box, segment.term().fill(), Ink.line(1.5));
        segment.inside().ifPresent(name -> {
            double left = box.getCenterX() - name.widthPx() / 2;
            double top = box.getCenterY() - name.heightPx() / 2;
            boolean hatched =
                    segment.term().fill() != Fill.GREY && segment.term().fill() != Fill.WHITE;
            if (hatched) {
                canvas.boxed(name, left, top, Align.MIDDLE);
            } else {
                canvas.paragraph(name, left, top, Align.MIDDLE);
            }
        });
    }

    /** Dotted lines at both ends show that the two bars are equally long. */
    private void uprights(Canvas canvas) {
        if (account.totalIn().compareTo(account.totalNow()) == 0
                && account.totalIn().signum() > 0) {
            double headTop = nowHeadBaseline() - 16;
            canvas.line(new Line2D.Double(LEFT_PX, in.barBottom(), LEFT_PX, headTop), Ink.dashed(1.2, 2f, 3f));
            double right = LEFT_PX + scale.px(account.totalIn());
            double bracketLabelTop = now.barBottom() - BAR_PX - 30;
            canvas.line(new Line2D.Double(right, in.barBottom(), right, bracketLabelTop), Ink.dashed(1.2, 2f, 3f));
        }
    }

    private void brackets(Canvas canvas) {
        double top = now.barBottom() - BAR_PX - BRACKET_ABOVE_PX;
        double gone = scale.px(account.totalGone());
        double here = scale.px(account.totalStillHere());
        Text goneWords = Text.plain(words.gone(), SIZE.textPx());
        Text hereWords = Text.plain(words.stillHere(), SIZE.textPx());
        double goneLeft = withinBar(LEFT_PX + (gone - goneWords.widthPx()) / 2, goneWords);
        double hereLeft = withinBar(LEFT_PX + gone + (here - hereWords.widthPx()) / 2, hereWords);
        double goneClear = Math.max(LEFT_PX, Math.min(goneLeft, hereLeft - goneWords.widthPx() - 12));
        double hereClear = Math.max(hereLeft, goneClear + goneWords.widthPx() + 12);
        bracket(canvas, new Line2D.Double(LEFT_PX, top, LEFT_PX + gone, top), goneWords, goneClear);
        bracket(canvas, new Line2D.Double(LEFT_PX + gone, top, LEFT_PX + gone + here, top), hereWords, hereClear);
    }

    private static double withinBar(double left, Text text) {
        return Math.max(LEFT_PX, Math.min(left, RIGHT_PX - text.widthPx()));
    }

    /** A group without water has neither bracket nor words. */
    private static void bracket(Canvas canvas, Line2D over, Text text, double textLeft) {
        double left = over.getX1() + BRACKET_GAP_PX;
        double right = over.getX2() - BRACKET_GAP_PX;
        double y = over.getY1();
        if (over.getX2() - over.getX1() < 0.5) {
            return;
        }
        canvas.text(text, textLeft, y - 5, Align.START);
        if (right > left) {
            canvas.line(new Line2D.Double(left, y, right, y), Ink.line(1.4));
            canvas.line(new Line2D.Double(left, y, left, y + 6), Ink.line(1.4));
            canvas.line(new Line2D.Double(right, y, right, y + 6), Ink.line(1.4));
        }
    }
}
