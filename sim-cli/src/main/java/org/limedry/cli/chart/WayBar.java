package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.limedry.cli.chart.ShownAccount.ShownTerm;

/** The dashed bar of what condensed on the way, its words beside it or, for want of room, below. */
final class WayBar {
    private static final double BAR_PX = 36;
    private static final double GAP_PX = 12;
    private static final double LEAST_BESIDE_PX = 240;

    private final ShownAccount account;
    private final AccountScale scale;
    private final Rectangle2D whole;
    private final Paragraph words;
    private final boolean beside;

    WayBar(ShownAccount account, AccountScale scale, double top) {
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
