package org.limedry.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.report.PageModel.CoatRow;
import org.limedry.cli.report.PageModel.FaceRow;
import org.limedry.cli.report.PageModel.RoomPart;
import org.limedry.cli.report.PageModel.RunPart;
import org.limedry.cli.report.PageModel.WarningRow;
import org.limedry.lime.ReadinessRule;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.study.ReadyRange;
import org.limedry.units.Units;
import org.limedry.wall.WallPlan;

/** Words a page model from what was found. */
final class PageModels {
    private static final double CLOSED_LITRES = 1e-6;
    private static final int MOST_FACES = 8;

    private final Findings findings;
    private final Days days;
    private final ReadyText ready;

    private PageModels(Findings findings) {
        this.findings = findings;
        this.days = findings.days();
        this.ready = new ReadyText(findings);
    }

    /** Returns the page model. */
    static PageModel of(Findings findings) {
        return new PageModels(findings).model();
    }

    private PageModel model() {
        List<Coat> worstFirst = worstFirst(findings);
        Optional<Coat> worstLaid = firstLaid(worstFirst);
        List<DoLine> todo = Advice.of(findings, worstLaid);
        boolean severalRooms = findings.scenario().rooms().size() > 1;
        return new PageModel(
                head(worstFirst),
                (severalRooms ? worstFirst : findings.coats())
                        .stream().map(this::row).toList(),
                notes(),
                findings.notes().moved(),
                worstLaid.map(coat -> WhySlow.of(findings, coat)),
                todo,
                findings.situation(todo),
                Account.of(
                        findings.outcome().account(),
                        "account",
                        findings.notes().bucketLitres()),
                rooms(worstFirst),
                wetFaces(),
                warnings(),
                findings.notes().assumptions(),
                findings.notes().attribution(),
                run());
    }

    /** Returns the coats, those waited for longest first. */
    static List<Coat> worstFirst(Findings findings) {
        return findings.coats().stream()
                .sorted(Coat.worstFirst(findings.outcome().reached()))
                .toList();
    }

    private static Optional<Coat> firstLaid(List<Coat> coats) {
        return coats.stream().filter(coat -> coat.result().laid().isPresent()).findFirst();
    }

    private PageModel.Head head(List<Coat> worstFirst) {
        String period = Days.full(days.date(findings.scenario().from())) + " to "
                + Days.full(days.lastDay(findings.scenario().until()));
        String headline = worstFirst.stream()
                .findFirst()
                .map(ready::heading)
                .orElse("No coat was laid: this is where the water of the rooms goes");
        return new PageModel.Head(
                findings.scenario().site(), period, findings.notes().invented(), headline);
    }

    private CoatRow row(Coat coat) {
        WallPlan wall = findings.wall(coat.plan().wall());
        String laid = coat.result()
                .laid()
                .map(instant -> "laid " + days.table(days.date(instant)))
                .orElse("not laid by " + days.brief(ready.lastDay()));
        String detail = "%s m\u00b2, %s mm%s, %s"
                .formatted(
                        Figures.plain(wall.areaM2()),
                        Figures.plain(Units.mmFromMetres(coat.plan().thicknessM())),
                        under(coat, wall),
                        laid);
        String label =
                Names.capital(coat.wall() + ", " + Names.ordinal(coat.plan().number()) + " coat");
        return new CoatRow(label, detail, ready.page(coat), coat.result().byHand() || findings.quick());
    }

    /** Returns what the coat goes on, to stand in a list: ", on damp old brick". */
    private String under(Coat coat, WallPlan wall) {
        if (coat.plan().number() > 1) {
            return ", on the coat before";
        }
        String background = findings.notes().backgrounds().getOrDefault(wall.name(), "");
        return background.isEmpty() ? "" : ", on " + background;
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (findings.outcome().ending() instanceof Outcome.Ending.GaveUp) {
            notes.add("The calculation stopped early, on "
                    + days.text(days.date(findings.outcome().reached())) + ": every figure here belongs to that day.");
        }
        notes.add(
                findings.quick()
                        ? "Likely dates only: this was a quick run without ranges, so how early or late it may be is not"
                                + " known."
                        : "One chance in five that it is ready before the earliest date, one in five that it is later than"
                                + " the latest.");
        List<String> widened = findings.coats().stream()
                .filter(coat -> coat.range().filter(ReadyRange::widened).isPresent())
                .map(Coat::label)
                .toList();
        if (!widened.isEmpty()) {
            notes.add("For " + String.join("; ", widened)
                    + " the likely date itself is outside these marks, so the range was stretched to it.");
        }
        ReadinessRule rule = findings.scenario().rule();
        notes.add("Rule: " + rule.name() + Names.meaning(rule)
                + "; a rule, not a measurement, and a hand test overrules it.");
        return List.copyOf(notes);
    }

    private List<RoomPart> rooms(List<Coat> worstFirst) {
        List<RoomPlan> plans = findings.scenario().rooms();
        return IntStream.range(0, plans.size())
                .mapToObj(i -> room(plans.get(i).name(), "account-" + (i + 1), worstFirst))
                .toList();
    }

    private RoomPart room(String name, String accountId, List<Coat> worstFirst) {
        List<Coat> here = worstFirst.stream()
                .filter(coat ->
                        Waiting.roomOf(findings.wall(coat.plan().wall())).equals(name))
                .toList();
        return new RoomPart(
                name,
                here,
                firstLaid(here).map(coat -> WhySlow.of(findings, coat)),
                Account.of(
                        findings.roomAccount(name), accountId, findings.notes().bucketLitres()));
    }

    private List<FaceRow> wetFaces() {
        FaceNames names = FaceNames.of(findings.outcome().faces());
        return findings.outcome().faces().stream()
                .filter(face -> Math.round(Math.max(face.dewHours(), face.dampFaceHours())) > 0)
                .sorted(Comparator.comparingDouble(Outcome.FaceResult::dewHours).reversed())
                .limit(MOST_FACES)
                .map(face -> new FaceRow(
                        Names.capital(findings.words(names.name(face.wall(), face.room()))),
                        Figures.whole(face.dewHours()),
                        Figures.whole(face.dampFaceHours()),
                        Figures.whole(face.runningWetHours())))
                .toList();
    }

    private List<WarningRow> warnings() {
        List<WarningGroup> all = findings.warnings();
        return all.stream()
                .filter(group -> !UnfluedBox.holds(group.warning(), all))
                .map(group -> new WarningRow(
                        when(group),
                        WarningText.of(
                                group.warning(), findings.words(group.warning().subject()))))
                .toList();
    }

    private String when(WarningGroup group) {
        LocalDate first = days.date(group.warning().from());
        LocalDate last = days.lastDay(group.warning().until());
        String span = last.isAfter(first) ? days.brief(first) + " to " + days.brief(last) : days.brief(first);
        return group.times() > 1 ? span + ", " + group.times() + " times" : span;
    }

    private RunPart run() {
        Outcome.Statistics statistics = findings.outcome().statistics();
        double residual = Math.abs(findings.outcome().account().residualKg());
        String runs = findings.quick()
                ? "1 run for the likely dates"
                : findings.effort().rangeRuns() + " runs for the ranges, 1 for the likely dates";
        return new RunPart(
                "%s, %s seconds in all. The likely run: %s steps, %s refused and repeated, %s linear systems, %s cells."
                        .formatted(
                                runs,
                                Figures.oneDecimal(findings.effort().computeSeconds()),
                                Figures.whole(statistics.steps()),
                                Figures.whole(statistics.rejectedSteps()),
                                Figures.whole(statistics.linearSolves()),
                                Figures.whole(statistics.cells())),
                findings.notes().weather(),
                residual < CLOSED_LITRES
                        ? "The account closes to better than a millionth of a litre."
                        : "The account is off by " + String.format(Locale.ROOT, "%.2g", residual) + " litres.",
                findings.effort().version());
    }
}
