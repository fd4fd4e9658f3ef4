package org.limedry.lime;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.limedry.reference.GuidanceRule;
import org.limedry.units.Units;

/**
 * The written rules of the trade that bear on a coat: shortest waits and greatest thickness. They are set beside the
 * forecast and never change it; where two disagree both are given.
 */
public final class Guidance {
    private static final Pattern FIRST_NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final double HOURS_PER_DAY = 24.0;

    /** Thickness in one coat above which waits grow faster than thickness, mm. Common practice, no source. */
    private static final double THICK_MM = 12.0;

    private final List<GuidanceRule> rules;

    private Guidance(List<GuidanceRule> rules) {
        this.rules = List.copyOf(rules);
    }

    /** Returns the guidance of these rules. */
    public static Guidance of(List<GuidanceRule> rules) {
        return new Guidance(rules);
    }

    /**
     * A shortest wait before the next coat.
     *
     * @param days days
     * @param rule the rule as worded, with its source
     */
    public record Wait(double days, GuidanceRule rule) {}

    /**
     * Something to say about the thickness of a coat.
     *
     * @param words what is wrong
     * @param source source number, or what it rests on
     */
    public record ThicknessNote(String words, String source) {}

    /** Returns the shortest waits that are written down for such a coat, in the order of the table. */
    public List<Wait> waits(Mix mix, boolean onLath) {
        List<Wait> waits = new ArrayList<>();
        for (GuidanceRule rule : rules) {
            boolean hydraulic = mix.lime().isHydraulic() && rule.rule().contains("hydraulic lime");
            boolean hairedOnLath = !mix.lime().isHydraulic()
                    && mix.haired()
                    && onLath
                    && rule.rule().contains("on lath");
            if (rule.topic().equals("interval") && (hydraulic || hairedOnLath)) {
                firstNumber(rule).ifPresent(number -> waits.add(new Wait(days(number, rule.unit()), rule)));
            }
        }
        return List.copyOf(waits);
    }

    /**
     * Returns what is to be said about the thickness of a coat on its own.
     *
     * @param mix its mix
     * @param thicknessM its thickness, m
     */
    public List<ThicknessNote> thicknessNotes(Mix mix, double thicknessM) {
        List<ThicknessNote> notes = new ArrayList<>();
        double thicknessMm = Units.mmFromMetres(thicknessM);
        if (mix.lime().isHydraulic()) {
            limit("NHL base coat up to", thicknessMm).ifPresent(notes::add);
        }
        if (mix.isFinish()) {
            limit("putty finish in wet-on-wet passes", thicknessMm).ifPresent(notes::add);
        }
        if (thicknessMm > THICK_MM) {
            notes.add(new ThicknessNote(
                    "over 12 mm in one coat the wait grows faster than the thickness", "common practice, no source"));
        }
        return List.copyOf(notes);
    }

    /**
     * Returns what is to be said about a coat over another.
     *
     * @param mix its mix
     * @param thicknessM its thickness, m
     * @param under mix of the coat under it
     * @param underThicknessM thickness of the coat under it, m
     */
    public List<ThicknessNote> overCoatNotes(Mix mix, double thicknessM, Mix under, double underThicknessM) {
        boolean thicker = thicknessM > underThicknessM;
        boolean richer = !mix.isFinish() && mix.sandPerLime() < under.sandPerLime();
        if (!thicker && !richer) {
            return List.of();
        }
        GuidanceRule rule = find("coat not thicker or richer than the one before");
        String words = thicker && richer ? "thicker and richer" : thicker ? "thicker" : "richer";
        return List.of(new ThicknessNote(words + " than the coat under it", rule.source()));
    }

    private Optional<ThicknessNote> limit(String ruleStart, double thicknessMm) {
        GuidanceRule rule = find(ruleStart);
        return firstNumber(rule)
                .filter(limitMm -> thicknessMm > limitMm)
                .map(limitMm ->
                        new ThicknessNote(rule.rule() + " " + rule.number() + " " + rule.unit(), rule.source()));
    }

    private GuidanceRule find(String start) {
        return rules.stream()
                .filter(rule -> rule.rule().startsWith(start))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("guidance rules: must have \"" + start + "...\""));
    }

    /** A range such as "3-5" counts by its lower end: a shortest wait, a least thickness. */
    private static Optional<Double> firstNumber(GuidanceRule rule) {
        Matcher matcher = FIRST_NUMBER.matcher(rule.number());
        return matcher.find() ? Optional.of(Double.valueOf(matcher.group())) : Optional.empty();
    }

    private static double days(double number, String unit) {
        return unit.equals("hours") ? number / HOURS_PER_DAY : number;
    }
}
