package org.limedry.cli.report;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.chart.Chart;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.Size;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Templates;
import org.limedry.room.RoomPlan;

/** {@code report.html}: one file that holds all it needs, for telephone and A4. */
final class HtmlPage {
    private static final String DRYING_NOTE =
            "Bars: earliest to latest, thick tick likely. Diamonds: the likely day. Ready is judged by the rule, for firming takes"
                    + " time as well as drying: no water mark tells it.";
    private static final String WALL_NOTE =
            "Solid black: dew point at or above the wall. Closer than 1 \u00b0C, treat the wall as wet too.";
    private static final String ACCOUNT_NOTE =
            "Both upper bars are the same length: every term is counted by itself, none is what is left over. Litres are"
                    + " rounded so that they add up.";

    private final Findings findings;
    private final PageModel page;
    private final Pictures pictures;

    private HtmlPage(Findings findings, PageModel page, Pictures pictures) {
        this.findings = findings;
        this.page = page;
        this.pictures = pictures;
    }

    /** Returns the file's text. */
    static String of(Findings findings, PageModel page, Pictures pictures) {
        return Templates.fill("report/report.mustache", new HtmlPage(findings, page, pictures).view());
    }

    /** What the template sees. */
    private record View(
            PageModel page,
            boolean quick,
            boolean coatTable,
            List<UnfluedBox> unflued,
            boolean hasWarnings,
            boolean hasWetFaces,
            boolean hasVaried,
            List<SiteNotes.Assumption> varied,
            boolean hasTaken,
            List<SiteNotes.Assumption> taken,
            String hours,
            List<RoomView> rooms,
            Optional<AccountView> wholeSite) {}

    /** One room. */
    private record RoomView(
            String heading,
            Optional<String> ownWhy,
            Optional<FigureView> drying,
            Optional<FigureView> wallAndDewPoint,
            AccountView account) {}

    /** An account with its chart. */
    private record AccountView(FigureView figure, String caption, Account account) {}

    /** A chart in both sizes. */
    private record FigureView(String title, String wide, String narrow, String note) {}

    private View view() {
        boolean several = page.rooms().size() > 1;
        long hours = Duration.between(
                        findings.scenario().from(), findings.outcome().reached())
                .toHours();
        List<SiteNotes.Assumption> varied = page.assumptions().stream()
                .filter(SiteNotes.Assumption::isVaried)
                .toList();
        List<SiteNotes.Assumption> taken =
                page.assumptions().stream().filter(item -> !item.isVaried()).toList();
        return new View(
                page,
                findings.quick(),
                !page.coats().isEmpty(),
                UnfluedBox.of(findings),
                !page.warnings().isEmpty(),
                !page.wetFaces().isEmpty(),
                !varied.isEmpty(),
                varied,
                !taken.isEmpty(),
                taken,
                Figures.whole(hours),
                IntStream.range(0, page.rooms().size())
                        .mapToObj(i -> room(i, several))
                        .toList(),
                several
                        ? Optional.of(account(page.account(), "The water account of the whole site"))
                        : Optional.empty());
    }

    private RoomView room(int index, boolean several) {
        PageModel.RoomPart part = page.rooms().get(index);
        RoomPlan plan = findings.scenario().rooms().get(index);
        String suffix = "-" + (index + 1);
        return new RoomView(
                several ? "Room: " + part.name() : "The drying in pictures",
                several ? part.why().map(WhySlow.Sentence::brief) : Optional.empty(),
                pictures.drying("drying" + suffix, part.coats(), List.of(plan))
                        .map(chart -> figure(chart, DRYING_NOTE)),
                pictures.wallAndDewPoint("wall" + suffix, plan).map(chart -> figure(chart, WALL_NOTE)),
                several
                        ? account(part.account(), "The water account of the " + part.name())
                        : account(page.account(), "The water account: what went in, and where it is"));
    }

    private static AccountView account(Account account, String caption) {
        return new AccountView(figure(account.chart(), ACCOUNT_NOTE), caption, account);
    }

    private static FigureView figure(Chart chart, String note) {
        return new FigureView(chart.title(), Charts.svg(chart, Size.WIDE), Charts.svg(chart, Size.NARROW), note);
    }
}
