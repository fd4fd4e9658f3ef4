package org.limedry.cli.delay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.site.Site;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.Uncertain;
import org.limedry.units.Check;

/**
 * The members behind the range of each cause: the unknowns of {@code --ranges}, the ready rule's own always among them.
 *
 * <p>What counts as ready moves the causes most, so two of the members are the ends of the rule's suction, all else likely;
 * the others are spread evenly over all unknowns, the suction too. Without a suction to vary (a rule of your own, or a fit
 * that has learnt it) all of them are.
 */
public final class DelayMembers {
    /** Members that a letter stands on: with the likely run nine reckonings of every mixture. */
    public static final int ORDINARY = 8;

    /** Fewer leave no room beside the two ends. */
    private static final int FEWEST = 4;

    static final String READY_SUCTION = "readySuction";
    static final String WETNESS = "wetness";
    private static final Set<String> OF_THE_RULE = Set.of(READY_SUCTION, "readyAge", "readyFace");

    private DelayMembers() {}

    /**
     * Returns the members of a site; none if everything about it is known.
     *
     * @param site the site
     * @param members how many; at least 4
     */
    public static Ensemble of(Site site, int members) {
        Check.atLeast(members, FEWEST, "members");
        List<Uncertain> unknowns = unknowns(site);
        if (unknowns.isEmpty()) {
            return Ensemble.likelyOnly();
        }
        List<Draw> draws = new ArrayList<>();
        if (unknowns.stream().anyMatch(unknown -> unknown.key().equals(READY_SUCTION))) {
            draws.add(new Draw(Map.of(READY_SUCTION, 0.0)));
            draws.add(new Draw(Map.of(READY_SUCTION, 1.0)));
        }
        draws.addAll(Ensemble.over(unknowns, members - draws.size()).draws());
        return new Ensemble(draws);
    }

    /** Those of the site, and those of the rule that its list of the most important ones left out. */
    private static List<Uncertain> unknowns(Site site) {
        Set<String> learnt = site.fitted().stream()
                .flatMap(file -> file.fitted().keys().stream())
                .collect(Collectors.toSet());
        Map<String, Uncertain> all = new LinkedHashMap<>();
        Stream<Uncertain> ofTheRule = site.fittable().stream()
                .filter(unknown -> OF_THE_RULE.contains(unknown.key()))
                .filter(unknown -> !learnt.contains(unknown.key()));
        Stream.concat(site.uncertain().stream(), ofTheRule).forEach(unknown -> all.putIfAbsent(unknown.key(), unknown));
        return List.copyOf(all.values());
    }
}
