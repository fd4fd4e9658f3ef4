package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.chart.ShownAccount.ShownTerm;

/** The wide water account: two bars of one length, and below them what condensed on the way. */
final class AccountBars extends Picture {
    private static final Size SIZE = Size.WIDE;
    private static final double LEFT_PX = 4;
    private static final double RIGHT_PX = 676;
    private static final double BAR_PX = 46;
    private static final double SPARE_PX = 8;
    private static final double BRACKET_ABOVE_PX = 8;
    private static final double BRACKET_GAP_PX = 2;

    private final ShownAccount account;
    private final AccountWords words;
    private final Scale scale;
    private final Bar in;
    private final Bar now;
    private final WayBar way;
    private final double wayTop;

    AccountBars(ShownAccount account) {
        super(SIZE);
        this.account = account;
        this.words = new AccountWords(account);
        this.scale = Scale.of(account, LEFT_PX, RIGHT_PX);
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
                        plain(segment.term().text()), segment.box().getCenterX()))
                .toList();
        double bottom = top + BAR_PX;
        return new Bar(segments, Leaders.below(bottom, outside), bottom);
    }

    /** Returns the name set to fit into its segment with room to spare, if it can be. */
    private Optional<Paragraph> inside(ShownTerm term, double widthPx) {
        Text oneLine = Text.bold(term.text(), SIZE.headPx());
        Text twoLines = bold(term.text());
        return Stream.concat(Stream.of(Paragraph.of(oneLine)), Paragraph.inTwo(twoLines).stream())
                .filter(setting -> setting.widthPx() + 2 * SPARE_PX <= widthPx)
                .findFirst();
    }

    @Override
    double heightPx() {
        return wayTop + (words.nothingCondensed() ? 0 : way.heightPx() + 8);
    }

    @Override
    String story() {
        return words.story();
    }

    @Override
    void draw(Canvas canvas) {
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
        Text goneWords = plain(words.gone());
        Text hereWords = plain(words.stillHere());
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

    /** The dashed bar of what condensed on the way, its words beside it or, for want of room, below. */
    private static final class WayBar {
        private static final double BAR_PX = 36;
        private static final double GAP_PX = 12;
        private static final double LEAST_BESIDE_PX = 240;

        private final ShownAccount account;
        private final Scale scale;
        private final Rectangle2D whole;
        private final Paragraph words;
        private final boolean beside;

        WayBar(ShownAccount account, Scale scale, double top) {
            this.account = account;
            this.scale = scale;
            double width = Math.min(scale.px(account.totalOnTheWay()), scale.right() - scale.left());
            this.whole = new Rectangle2D.Double(scale.left(), top, width, BAR_PX);
            double besidePx = scale.right() - whole.getMaxX() - GAP_PX;
            this.beside = besidePx >= LEAST_BESIDE_PX;
            Text text = Text.plain(sentence(), Size.WIDE.textPx());
            this.words = Paragraph.wrapped(text, beside ? besidePx : scale.right() - scale.left());
        }

        private String sentence() {
            String became = new AccountWords(account).becameOfIt();
            String cut = scale.cutWords(account.totalOnTheWay());
            return cut.isEmpty() ? became : became + " (" + cut + ")";
        }

        double heightPx() {
            return beside ? Math.max(BAR_PX, words.heightPx()) : BAR_PX + GAP_PX + words.heightPx();
        }

        void draw(Canvas canvas) {
            double left = whole.getX();
            for (ShownTerm term : account.onTheWay()) {
                double width = Math.min(scale.px(term.litres()), whole.getMaxX() - left);
                if (width > 0) {
                    Rectangle2D part = new Rectangle2D.Double(left, whole.getY(), width, BAR_PX);
                    canvas.bar(part, term.fill(), Ink.dashed(1.5, 5f, 3f));
                }
                left += Math.max(0, width);
            }
            if (scale.cuts(account.totalOnTheWay())) {
                double right = whole.getMaxX();
                Line2D openEnd = new Line2D.Double(right, whole.getY() - 1, right, whole.getMaxY() + 1);
                canvas.draw(openEnd, Ink.line(4), Ink.PAPER);
            }
            if (beside) {
                double top = Math.max(whole.getY(), whole.getCenterY() - words.heightPx() / 2);
                canvas.paragraph(words, whole.getMaxX() + GAP_PX, top, Align.START);
            } else {
                canvas.paragraph(words, whole.getX(), whole.getMaxY() + GAP_PX, Align.START);
            }
        }
    }

    /**
     * The one scale of all bars of a water account.
     *
     * @param left where each bar starts, px
     * @param right where the longest bar ends, px
     * @param pxPerLitre px for each litre
     */
    record Scale(double left, double right, double pxPerLitre) {
        /** Water that went round many times over may not shrink the account to nothing: its bar is cut instead. */
        private static final double MOST_TIMES_ROUND = 2;

        static Scale of(ShownAccount account, double left, double right) {
            double sum = Stream.of(account.totalIn(), account.totalNow())
                    .mapToDouble(BigDecimal::doubleValue)
                    .max()
                    .orElse(0);
            double way = account.totalOnTheWay().doubleValue();
            double longest = sum > 0 ? Math.max(sum, Math.min(way, MOST_TIMES_ROUND * sum)) : way;
            return new Scale(left, right, longest > 0 ? (right - left) / longest : 0);
        }

        double px(BigDecimal litres) {
            return litres.doubleValue() * pxPerLitre;
        }

        /** Returns what to say of a bar so long, empty unless it is cut. */
        String cutWords(BigDecimal litres) {
            return cuts(litres) ? "bar cut off: it is longer than the page" : "";
        }

        /** Returns whether a bar so long has to be cut at the right end. */
        boolean cuts(BigDecimal litres) {
            return left + px(litres) > right + 0.5;
        }
    }
}
